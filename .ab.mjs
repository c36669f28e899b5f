// src/shared/json-place.ts
/**
* Where a text stops being JSON (RFC 8259). The engine's own complaint names the place in some of
* its versions and for some mistakes only; a person with a file of a thousand lines needs it always.
*/
const number$3 = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const word = /true|false|null/y;
const space = /[ \t\n\r]*/y;
const escaped = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
/** Index just after the pattern at `from`, or −1 when it does not stand there. */
function after(pattern, text, from) {
	pattern.lastIndex = from;
	return pattern.test(text) ? pattern.lastIndex : -1;
}
const skip = (text, from) => after(space, text, from);
/** From the opening quote to after the closing one, or to what may not stand in a text. */
function scanString(text, from) {
	let at = from + 1;
	while (at < text.length) {
		const code = text.charCodeAt(at);
		if (code === 34) return {
			at: at + 1,
			closed: true
		};
		if (code < 32) break;
		const end = code === 92 ? after(escaped, text, at) : at + 1;
		if (end < 0) break;
		at = end;
	}
	return {
		at,
		closed: false
	};
}
/**
* Index of the first character that cannot stand where it does, or of the word or number that it
* breaks; the length when the text stops too early.
*/
function jsonErrorAt(text) {
	const open = [];
	let next = "value";
	let at = skip(text, 0);
	while (at < text.length) {
		const c = text[at];
		const inner = open.at(-1);
		const keyComes = next === "key" || next === "key-or-end";
		if ((next === "after" || next === "value-or-end" || next === "key-or-end") && inner !== void 0 && c === (inner === "{" ? "}" : "]")) {
			open.pop();
			next = "after";
			at++;
		} else if (next === "after") {
			if (c !== "," || inner === void 0) return at;
			next = inner === "{" ? "key" : "value";
			at++;
		} else if (next === "colon") {
			if (c !== ":") return at;
			next = "value";
			at++;
		} else if (c === "\"") {
			const { at: end, closed } = scanString(text, at);
			if (!closed) return end;
			at = end;
			next = keyComes ? "colon" : "after";
		} else if (keyComes) return at;
		else if (c === "{" || c === "[") {
			open.push(c);
			next = c === "{" ? "key-or-end" : "value-or-end";
			at++;
		} else {
			const end = Math.max(after(number$3, text, at), after(word, text, at));
			if (end < 0) return at;
			at = end;
			next = "after";
		}
		at = skip(text, at);
	}
	return text.length;
}
// node_modules/zod/v4/core/util.js
function getEnumValues(entries) {
	const numericValues = Object.values(entries).filter((v) => typeof v === "number");
	return Object.entries(entries).filter(([k, _]) => numericValues.indexOf(+k) === -1).map(([_, v]) => v);
}
function joinValues(array, separator = "|") {
	return array.map((val) => stringifyPrimitive(val)).join(separator);
}
function jsonStringifyReplacer(_, value) {
	if (typeof value === "bigint") return value.toString();
	return value;
}
var Cached = class {
	constructor(getter) {
		this._getter = getter;
		this._value = void 0;
	}
	get value() {
		const getter = this._getter;
		if (getter !== void 0) {
			this._value = getter();
			this._getter = void 0;
		}
		return this._value;
	}
};
function cached(getter) {
	return new Cached(getter);
}
function nullish(input) {
	return input === null || input === void 0;
}
function cleanRegex(source) {
	const start = source.startsWith("^") ? 1 : 0;
	const end = source.endsWith("$") ? source.length - 1 : source.length;
	return source.slice(start, end);
}
function floatSafeRemainder(val, step) {
	const ratio = val / step;
	const roundedRatio = Math.round(ratio);
	const tolerance = 4 * Number.EPSILON * Math.max(Math.abs(ratio), 1);
	if (Math.abs(ratio - roundedRatio) < tolerance) return 0;
	return ratio - roundedRatio;
}
function assignProp(target, prop, value) {
	Object.defineProperty(target, prop, {
		value,
		writable: true,
		enumerable: true,
		configurable: true
	});
}
/**
* Whichever object a def's `shape` currently answers from: the one the caller passed until the first read, the frozen copy after it.
*
* Its keys and descriptors read without invoking anything, which is what lets a discriminated union check its discriminator, and the cycle walk read a shape, without resolving a getter that references the schema being constructed. A def that answers `shape` from an accessor of its own has none.
*/
function rawShape(def) {
	const desc = Object.getOwnPropertyDescriptor(def, "shape");
	return desc?.get ? desc.get.raw : desc?.value;
}
function sourceShape(schema) {
	return rawShape(schema._zod.def) ?? schema._zod.def.shape;
}
function deferProp(target, key, getter) {
	Object.defineProperty(target, key, {
		get() {
			const value = getter();
			assignProp(this, key, value);
			return value;
		},
		enumerable: true,
		configurable: true
	});
}
function putProp(target, key, value) {
	if (key in target) assignProp(target, key, value);
	else target[key] = value;
}
/**
* Copies `keys` of `source`'s shape onto `target`, each value passed through `wrap`.
*
* A key the source has resolved is copied through now, so the derived shape states it outright and nothing has to resolve it to learn what it holds. A key the source still defers stays deferred, and reads back through the source's own `shape`, so it resolves once and both shapes get that one schema.
*/
function mirrorShape(target, source, keys, wrap) {
	const raw = sourceShape(source);
	for (const key of keys) {
		const desc = Object.getOwnPropertyDescriptor(raw, key);
		if (!desc.enumerable) continue;
		if (desc.get) deferProp(target, key, () => {
			const value = source._zod.def.shape[key];
			return wrap ? wrap(value, key) : value;
		});
		else putProp(target, key, wrap ? wrap(desc.value, key) : desc.value);
	}
}
function mirrorProps(target, source) {
	for (const key of Reflect.ownKeys(source)) {
		const desc = Object.getOwnPropertyDescriptor(source, key);
		if (!desc.enumerable) continue;
		if (desc.get) deferProp(target, key, () => source[key]);
		else putProp(target, key, desc.value);
	}
}
function mergeDefs(...defs) {
	const mergedDescriptors = {};
	for (const def of defs) {
		const descriptors = Object.getOwnPropertyDescriptors(def);
		Object.assign(mergedDescriptors, descriptors);
	}
	return Object.defineProperties({}, mergedDescriptors);
}
function esc(str) {
	return JSON.stringify(str);
}
function slugify(input) {
	return input.toLowerCase().trim().replace(/[^\w\s-]/g, "").replace(/[\s_-]+/g, "-").replace(/^-+|-+$/g, "");
}
const captureStackTrace = "captureStackTrace" in Error ? Error.captureStackTrace : (..._args) => {};
function isObject(data) {
	return typeof data === "object" && data !== null && !Array.isArray(data);
}
const allowsEval = /* @__PURE__*/ cached(() => {
	if (globalConfig.jitless) return false;
	if (typeof navigator !== "undefined" && navigator?.userAgent?.includes("Cloudflare")) return false;
	try {
		new Function("");
		return true;
	} catch (_) {
		return false;
	}
});
function isPlainObject(o) {
	if (isObject(o) === false) return false;
	const ctor = o.constructor;
	if (ctor === void 0) return true;
	if (typeof ctor !== "function") return true;
	const prot = ctor.prototype;
	if (isObject(prot) === false) return false;
	if (Object.prototype.hasOwnProperty.call(prot, "isPrototypeOf") === false) return false;
	return true;
}
function shallowClone(o) {
	if (isPlainObject(o)) return { ...o };
	if (Array.isArray(o)) return [...o];
	if (o instanceof Map) return new Map(o);
	if (o instanceof Set) return new Set(o);
	return o;
}
const propertyKeyTypes = /* @__PURE__*/ new Set([
	"string",
	"number",
	"symbol"
]);
function escapeRegex(str) {
	return str.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}
function clone(inst, def, params) {
	const cl = new inst._zod.constr(def ?? inst._zod.def);
	if (!def || params?.parent) cl._zod.parent = inst;
	return cl;
}
function normalizeParams(_params) {
	const params = _params;
	if (!params) return {};
	if (typeof params === "string") return { error: () => params };
	if (params?.message !== void 0) {
		if (params?.error !== void 0) throw new Error("Cannot specify both `message` and `error` params");
		params.error = params.message;
	}
	delete params.message;
	if (typeof params.error === "string") return {
		...params,
		error: () => params.error
	};
	return params;
}
function stringifyPrimitive(value) {
	if (typeof value === "bigint") return value.toString() + "n";
	if (typeof value === "string") return `"${value}"`;
	return `${value}`;
}
function optionalKeys(shape) {
	return Object.keys(shape).filter((k) => {
		return shape[k]._zod.optin !== void 0 && shape[k]._zod.optout === "optional";
	});
}
const NUMBER_FORMAT_RANGES = /*@__PURE__*/ (() => ({
	safeint: [Number.MIN_SAFE_INTEGER, Number.MAX_SAFE_INTEGER],
	int32: [-2147483648, 2147483647],
	uint32: [0, 4294967295],
	float32: [-34028234663852886e22, 34028234663852886e22],
	float64: [-Number.MAX_VALUE, Number.MAX_VALUE]
}))();
const BIGINT_FORMAT_RANGES = {
	int64: [/* @__PURE__*/ BigInt("-9223372036854775808"), /* @__PURE__*/ BigInt("9223372036854775807")],
	uint64: [/* @__PURE__*/ BigInt(0), /* @__PURE__*/ BigInt("18446744073709551615")]
};
function pick(schema, mask) {
	const currDef = schema._zod.def;
	const checks = currDef.checks;
	if (checks && checks.length > 0) throw new Error(".pick() cannot be used on object schemas containing refinements");
	const newShape = {};
	mirrorShape(newShape, schema, maskedKeys(schema, mask));
	return clone(schema, mergeDefs(currDef, {
		shape: newShape,
		checks: []
	}));
}
function maskedKeys(schema, mask) {
	const raw = sourceShape(schema);
	const keys = [];
	for (const key of Reflect.ownKeys(mask)) {
		if (!Object.getOwnPropertyDescriptor(raw, key)?.enumerable) throw new Error(`Unrecognized key: "${String(key)}"`);
		if (mask[key]) keys.push(key);
	}
	return keys;
}
function omit(schema, mask) {
	const currDef = schema._zod.def;
	const checks = currDef.checks;
	if (checks && checks.length > 0) throw new Error(".omit() cannot be used on object schemas containing refinements");
	const omitted = new Set(maskedKeys(schema, mask));
	const newShape = {};
	mirrorShape(newShape, schema, Reflect.ownKeys(sourceShape(schema)).filter((key) => !omitted.has(key)));
	return clone(schema, mergeDefs(currDef, {
		shape: newShape,
		checks: []
	}));
}
function extend(schema, shape) {
	if (!isPlainObject(shape)) throw new Error("Invalid input to extend: expected a plain object");
	const checks = schema._zod.def.checks;
	if (checks && checks.length > 0) {
		const existingShape = sourceShape(schema);
		for (const key of Reflect.ownKeys(shape)) if (Object.getOwnPropertyDescriptor(existingShape, key) !== void 0) throw new Error("Cannot overwrite keys on object schemas containing refinements. Use `.safeExtend()` instead.");
	}
	return clone(schema, mergeDefs(schema._zod.def, { shape: extended(schema, shape) }));
}
function extended(schema, shape) {
	const newShape = {};
	mirrorShape(newShape, schema, Reflect.ownKeys(sourceShape(schema)));
	mirrorProps(newShape, shape);
	return newShape;
}
function safeExtend(schema, shape) {
	if (!isPlainObject(shape)) throw new Error("Invalid input to safeExtend: expected a plain object");
	return clone(schema, mergeDefs(schema._zod.def, { shape: extended(schema, shape) }));
}
function merge(a, b) {
	if (!b?._zod?.def) throw new Error("Invalid input to merge: expected an object schema. To merge a plain shape, use `.extend()`.");
	if (a._zod.def.checks?.length) throw new Error(".merge() cannot be used on object schemas containing refinements. Use .safeExtend() instead.");
	const newShape = {};
	mirrorShape(newShape, a, Reflect.ownKeys(sourceShape(a)));
	mirrorShape(newShape, b, Reflect.ownKeys(sourceShape(b)));
	return clone(a, mergeDefs(a._zod.def, {
		shape: newShape,
		get catchall() {
			return b._zod.def.catchall;
		},
		checks: b._zod.def.checks ?? []
	}));
}
function partial(Class, schema, mask, name = "partial") {
	const checks = schema._zod.def.checks;
	if (checks && checks.length > 0) throw new Error(`.${name}() cannot be used on object schemas containing refinements`);
	const selected = mask ? new Set(maskedKeys(schema, mask)) : void 0;
	const newShape = {};
	mirrorShape(newShape, schema, Reflect.ownKeys(sourceShape(schema)), Class && ((value, key) => selected && !selected.has(key) ? value : new Class({
		type: "optional",
		innerType: value
	})));
	return clone(schema, mergeDefs(schema._zod.def, {
		shape: newShape,
		checks: []
	}));
}
function required(Class, schema, mask) {
	const selected = mask ? new Set(maskedKeys(schema, mask)) : void 0;
	const newShape = {};
	mirrorShape(newShape, schema, Reflect.ownKeys(sourceShape(schema)), (value, key) => selected && !selected.has(key) ? value : new Class({
		type: "nonoptional",
		innerType: value
	}));
	return clone(schema, mergeDefs(schema._zod.def, { shape: newShape }));
}
function aborted(x, startIndex = 0) {
	if (x.aborted === true) return true;
	for (let i = startIndex; i < x.issues.length; i++) if (x.issues[i]?.continue !== true) return true;
	return false;
}
function explicitlyAborted(x, startIndex = 0) {
	if (x.aborted === true) return true;
	for (let i = startIndex; i < x.issues.length; i++) if (x.issues[i]?.continue === false) return true;
	return false;
}
function prefixIssues(path, issues) {
	return issues.map((iss) => {
		var _a;
		(_a = iss).path ?? (_a.path = []);
		iss.path.unshift(path);
		return iss;
	});
}
function unwrapMessage(message) {
	return typeof message === "string" ? message : message?.message;
}
/** The leading size checks of `defChecks` that set an upper bound, each paired with it. */
function sizeCaps(defChecks) {
	const caps = [];
	for (const ch of defChecks ?? []) {
		const d = ch._zod.def;
		if (!/_(length|size)$|_equals$/.test(d.check)) break;
		const max = d.maximum ?? d.length ?? d.size;
		if (max >= 0) caps.push([max, ch]);
	}
	return caps;
}
function attachSchema(issues, start, inst) {
	var _a;
	for (let i = start; i < issues.length; i++) (_a = issues[i]).schema ?? (_a.schema = inst);
}
function finalizeIssue(iss, ctx, config) {
	var _a;
	const traits = iss.inst?._zod?.traits;
	if (traits?.has("$ZodType")) {
		if (traits.has("$ZodCheck")) (_a = iss).schema ?? (_a.schema = iss.inst);
		else iss.schema = iss.inst;
	}
	const schemaError = iss.schema !== iss.inst ? iss.schema?._zod.def?.error : void 0;
	const message = iss.message ? iss.message : unwrapMessage(iss.inst?._zod.def?.error?.(iss)) ?? unwrapMessage(schemaError?.(iss)) ?? unwrapMessage(ctx?.error?.(iss)) ?? unwrapMessage(config.customError?.(iss)) ?? unwrapMessage(config.localeError?.(iss)) ?? "Invalid input";
	const full = {};
	for (const k of Object.keys(iss)) {
		if (k === "inst" || k === "schema" || k === "continue" || k === "input" || k === "__proto__") continue;
		full[k] = iss[k];
	}
	full.path ?? (full.path = []);
	full.message = message;
	if (ctx?.reportInput) full.input = iss.input;
	return full;
}
const highSurrogate = /[\uD800-\uDBFF]/;
function codePointLength(str) {
	const units = str.length;
	if (!highSurrogate.test(str)) return units;
	let count = units;
	for (let i = 0; i < units - 1; i++) if ((str.charCodeAt(i) & 64512) === 55296 && (str.charCodeAt(i + 1) & 64512) === 56320) {
		count--;
		i++;
	}
	return count;
}
function getLengthableOrigin(input) {
	if (Array.isArray(input)) return "array";
	if (typeof input === "string") return "string";
	return "unknown";
}
function parsedType(data) {
	const t = typeof data;
	switch (t) {
		case "number": return Number.isNaN(data) ? "nan" : "number";
		case "object": {
			if (data === null) return "null";
			if (Array.isArray(data)) return "array";
			const obj = data;
			if (obj && Object.getPrototypeOf(obj) !== Object.prototype && "constructor" in obj && obj.constructor) return obj.constructor.name;
		}
	}
	return t;
}
function issue(...args) {
	const [iss, input, inst] = args;
	if (typeof iss === "string") return {
		message: iss,
		code: "custom",
		input,
		inst
	};
	return { ...iss };
}
/**
* Installs a trait's members on its prototype. Each value builds that member for the instance on first read; the built value shadows the accessor as an own property, so a detached `const { parse } = schema` keeps working.
*
* Call this from a `proto` initializer, which runs once per prototype — never per instance.
*/
function members(proto, table) {
	for (const key in table) {
		const desc = Object.getOwnPropertyDescriptor(table, key);
		if (desc.get) Object.defineProperty(proto, key, {
			...desc,
			enumerable: false
		});
		else defineBound(proto, key, desc.value);
	}
}
/** Shadows a prototype member with an own value, so a getter that builds from the instance runs once. */
function own(inst, key, value, enumerable = true) {
	Object.defineProperty(inst, key, {
		configurable: true,
		writable: true,
		enumerable,
		value
	});
	return value;
}
/** Like {@link own}, for a member that was never an own data property and has to stay out of `Object.keys`. */
function hide(inst, key, value) {
	return own(inst, key, value, false);
}
/** Adds members a table derives from the instance: each builds on first read and shadows as own data, and assignment shadows the same way, as when these were own properties. */
/* @__NO_SIDE_EFFECTS__ */
function derived(computes, table) {
	for (const key in computes) {
		const compute = computes[key];
		Object.defineProperty(table, key, {
			configurable: true,
			enumerable: true,
			get() {
				return own(this, key, compute(this));
			},
			set(value) {
				own(this, key, value);
			}
		});
	}
	return table;
}
function defineBound(proto, key, fn) {
	Object.defineProperty(proto, key, {
		configurable: true,
		get() {
			return this == null ? fn : own(this, key, fn.bind(this));
		},
		set(value) {
			own(this, key, value);
		}
	});
}
/** Returns the prototype to install on, or `undefined` if this group is already installed on it. */
function claim(inst, sentinel) {
	const proto = Object.getPrototypeOf(inst);
	return sentinel in proto ? void 0 : proto;
}
let installing;
let broke = false;
const breaker = {
	configurable: true,
	get() {
		broke = true;
	}
};
/**
* Installs a lazily-derived internal on the `_zod` prototype of `inst`'s
* constructor, computed from the internals object itself and cached there on
* first read. One accessor per constructor rather than one per instance.
*/
function defineLazyInternal(inst, key, compute) {
	const proto = Object.getPrototypeOf(inst._zod);
	if (key in proto && installing !== inst._zod) {
		installing = void 0;
		return;
	}
	installing = inst._zod;
	Object.defineProperty(proto, key, {
		configurable: true,
		get() {
			Object.defineProperty(this, key, breaker);
			const outer = broke;
			broke = false;
			try {
				const value = compute(this);
				if (broke) delete this[key];
				else Object.defineProperty(this, key, {
					configurable: true,
					writable: true,
					value
				});
				broke = broke || outer;
				return value;
			} catch (err) {
				delete this[key];
				broke = broke || outer;
				throw err;
			}
		},
		set(value) {
			Object.defineProperty(this, key, {
				configurable: true,
				writable: true,
				value
			});
		}
	});
}
/**
* Installs `key` on `inst`'s prototype, computed by `make` on first read and cached there as an own
* data property. One accessor per constructor rather than one per instance, because an own accessor
* puts every instance after the first into v8 dictionary mode. The key doubles as the sentinel.
*/
function installLazyProp(inst, key, make, enumerable) {
	const proto = claim(inst, key);
	if (!proto) return;
	Object.defineProperty(proto, key, {
		configurable: true,
		get() {
			const desc = {
				configurable: true,
				writable: true,
				enumerable,
				value: void 0
			};
			Object.defineProperty(this, key, desc);
			desc.value = make(this);
			Object.defineProperty(this, key, desc);
			return desc.value;
		},
		set(value) {
			Object.defineProperty(this, key, {
				configurable: true,
				writable: true,
				enumerable,
				value
			});
		}
	});
}
/** Marks the thunk `_catch` synthesises for a constant catch value. `Function.length` cannot tell that thunk from a user callback — rest and defaulted parameters both report arity 0 — and a user callback reads `ctx.error`, whose issues only finalize correctly against the caller's per-parse error map. Provenance can say what arity cannot. A plain string key rather than `Symbol.for`, whose call at module scope no bundler can prove pure — the same shape that anchored `urlCanParse` into every build. */
const CONSTANT_CATCH = "~constantCatch";
/** Wraps a constant catch value in a thunk tagged with {@link CONSTANT_CATCH}. */
function constantCatch(value) {
	const fn = () => value;
	fn[CONSTANT_CATCH] = true;
	return fn;
}
// node_modules/zod/v4/core/core.js
var _a$1;
const _zodDesc = {
	value: void 0,
	enumerable: false
};
let _E = "captureStackTrace" in Error ? Error : null;
function newError(Definition) {
	const E = _E;
	if (E) {
		const saved = E.stackTraceLimit;
		if (typeof saved === "number") {
			try {
				E.stackTraceLimit = 0;
			} catch {
				_E = null;
				return new Definition();
			}
			try {
				return new Definition();
			} finally {
				E.stackTraceLimit = saved;
			}
		}
	}
	return new Definition();
}
/* @__NO_SIDE_EFFECTS__ */
function $constructor(name, initializer, proto, params) {
	const zodProto = {};
	function Internals(def) {
		this.def = def;
		this.constr = _;
		this.traits = /* @__PURE__ */ new Set();
	}
	Internals.prototype = zodProto;
	const protoMembers = proto;
	const initialized = protoMembers && /* @__PURE__ */ new WeakSet();
	function init(inst, def) {
		if (!inst._zod) {
			_zodDesc.value = new Internals(def);
			try {
				Object.defineProperty(inst, "_zod", _zodDesc);
			} finally {
				_zodDesc.value = void 0;
			}
		} else if (inst._zod.traits.has(name)) return;
		inst._zod.traits.add(name);
		initializer(inst, def);
		if (initialized) {
			const own = Object.getPrototypeOf(inst);
			const ctorProto = inst._zod.constr.prototype;
			let up = own;
			while (up && up !== ctorProto) up = Object.getPrototypeOf(up);
			const target = up ?? own;
			if (!initialized.has(target)) {
				initialized.add(target);
				members(target, protoMembers);
			}
		}
		const proto = _.prototype;
		for (const k in proto) {
			if (!Object.prototype.hasOwnProperty.call(proto, k)) continue;
			if (!(k in inst)) inst[k] = proto[k].bind(inst);
		}
	}
	const Parent = params?.Parent ?? Object;
	class Definition extends Parent {}
	Object.defineProperty(Definition, "name", { value: name });
	function _(def) {
		const inst = params?.Parent ? newError(Definition) : this;
		init(inst, def);
		const deferred = inst._zod.deferred;
		if (deferred) {
			for (const fn of deferred) fn();
			inst._zod.deferred = void 0;
		}
		const pp = globalThis.__zod_globalConfig?.postProcessor;
		if (pp) pp(inst);
		return inst;
	}
	Object.defineProperty(_, "init", { value: init });
	Object.defineProperty(_, Symbol.hasInstance, { value: (inst) => {
		if (params?.Parent && inst instanceof params.Parent) return true;
		return inst?._zod?.traits?.has(name);
	} });
	Object.defineProperty(_, "name", { value: name });
	return _;
}
var $ZodAsyncError = class extends Error {
	constructor() {
		super(`Encountered Promise during synchronous parse. Use .parseAsync() instead.`);
	}
};
var $ZodEncodeError = class extends Error {
	constructor(name) {
		super(`Encountered unidirectional transform during encode: ${name}`);
		this.name = "ZodEncodeError";
	}
};
(_a$1 = globalThis).__zod_globalConfig ?? (_a$1.__zod_globalConfig = {});
const globalConfig = globalThis.__zod_globalConfig;
function config(newConfig) {
	if (newConfig) Object.assign(globalConfig, newConfig);
	return globalConfig;
}
// node_modules/zod/v4/core/errors.js
function _getMessage() {
	const internals = this._zod;
	internals.message ?? (internals.message = JSON.stringify(internals.def, jsonStringifyReplacer, 2));
	return internals.message;
}
function _setMessage(value) {
	this._zod.message = value;
}
const _messageDesc = {
	get: _getMessage,
	set: _setMessage,
	enumerable: true,
	configurable: true
};
const _issuesDesc = {
	value: void 0,
	enumerable: false
};
const _installedToString = /* @__PURE__ */ new WeakSet([Object.prototype, Error.prototype]);
const initializer$1 = (inst, def) => {
	inst.name = "$ZodError";
	_issuesDesc.value = def;
	Object.defineProperty(inst, "issues", _issuesDesc);
	_issuesDesc.value = void 0;
	Object.defineProperty(inst, "message", _messageDesc);
	const proto = Object.getPrototypeOf(inst);
	if (!_installedToString.has(proto)) {
		_installedToString.add(proto);
		Object.defineProperty(proto, "toString", {
			configurable: true,
			enumerable: false,
			get() {
				const value = () => this.message;
				Object.defineProperty(this, "toString", {
					value,
					configurable: true,
					writable: true
				});
				return value;
			},
			set(value) {
				Object.defineProperty(this, "toString", {
					value,
					configurable: true,
					writable: true
				});
			}
		});
	}
};
const $ZodError = /* @__PURE__ */ $constructor("$ZodError", initializer$1);
/** Get-or-create `obj[key]` as an own data property. A path segment naming an inherited member
* ("toString", "constructor") would otherwise read through to the prototype, and assigning
* "__proto__" would hit the setter instead of creating a key. */
function node(obj, key, make) {
	if (!Object.prototype.hasOwnProperty.call(obj, key)) {
		if (key === "__proto__") Object.defineProperty(obj, key, {
			value: make(),
			writable: true,
			enumerable: true,
			configurable: true
		});
		else obj[key] = make();
	}
	return obj[key];
}
function flattenError(error, mapper = (issue) => issue.message) {
	const fieldErrors = {};
	const formErrors = [];
	for (const sub of error.issues) if (sub.path.length > 0) node(fieldErrors, sub.path[0], () => []).push(mapper(sub));
	else formErrors.push(mapper(sub));
	return {
		formErrors,
		fieldErrors
	};
}
function formatError(error, mapper = (issue) => issue.message) {
	const fieldErrors = { _errors: [] };
	const processError = (error, path = []) => {
		for (const issue of error.issues) if (issue.code === "invalid_union" && issue.errors.length) issue.errors.map((issues) => processError({ issues }, [...path, ...issue.path]));
		else if (issue.code === "invalid_key") processError({ issues: issue.issues }, [...path, ...issue.path]);
		else if (issue.code === "invalid_element") processError({ issues: issue.issues }, [...path, ...issue.path]);
		else {
			const fullpath = [...path, ...issue.path];
			if (fullpath.length === 0) fieldErrors._errors.push(mapper(issue));
			else {
				let curr = fieldErrors;
				let i = 0;
				while (i < fullpath.length) {
					const el = fullpath[i];
					const terminal = i === fullpath.length - 1;
					if (el === "_errors") {
						if (terminal) curr._errors.push(mapper(issue));
						i++;
						continue;
					}
					if (!Object.prototype.hasOwnProperty.call(curr, el)) Object.defineProperty(curr, el, {
						value: { _errors: [] },
						enumerable: true,
						writable: true,
						configurable: true
					});
					const node = curr[el];
					if (terminal) node._errors.push(mapper(issue));
					curr = node;
					i++;
				}
			}
		}
	};
	processError(error);
	return fieldErrors;
}
// node_modules/zod/v4/core/parse.js
function finalizeParams(callee, params) {
	return {
		callee: params?.callee ?? callee,
		Err: params?.Err
	};
}
const _parse = (_Err) => {
	const fn = (schema, value, _ctx, _params) => {
		const ctx = _ctx ? {
			..._ctx,
			async: false
		} : { async: false };
		const result = schema._zod.run({
			value,
			issues: []
		}, ctx);
		if (result instanceof Promise) throw new $ZodAsyncError();
		if (result.issues.length) {
			const e = new ((_params?.Err) ?? _Err)(result.issues.map((iss) => finalizeIssue(iss, ctx, config())));
			captureStackTrace(e, _params?.callee ?? fn);
			throw e;
		}
		return result.value;
	};
	return fn;
};
const _parseAsync = (_Err) => {
	const fn = async (schema, value, _ctx, params) => {
		const ctx = _ctx ? {
			..._ctx,
			async: true
		} : { async: true };
		let result = schema._zod.run({
			value,
			issues: []
		}, ctx);
		if (result instanceof Promise) result = await result;
		if (result.issues.length) {
			const e = new ((params?.Err) ?? _Err)(result.issues.map((iss) => finalizeIssue(iss, ctx, config())));
			captureStackTrace(e, params?.callee ?? fn);
			throw e;
		}
		return result.value;
	};
	return fn;
};
const _safeParse = (_Err) => (schema, value, _ctx) => {
	const ctx = _ctx ? {
		..._ctx,
		async: false
	} : { async: false };
	const result = schema._zod.run({
		value,
		issues: []
	}, ctx);
	if (result instanceof Promise) throw new $ZodAsyncError();
	return result.issues.length ? failure(_Err, result.issues, ctx) : {
		success: true,
		data: result.value
	};
};
function failure(Err, issues, ctx) {
	let error;
	return {
		success: false,
		get error() {
			if (!error) {
				error = new Err(issues.map((iss) => finalizeIssue(iss, ctx, config())));
				issues = void 0;
				ctx = void 0;
			}
			return error;
		},
		set error(e) {
			error = e;
			issues = void 0;
			ctx = void 0;
		}
	};
}
const _safeParseAsync = (_Err) => async (schema, value, _ctx) => {
	const ctx = _ctx ? {
		..._ctx,
		async: true
	} : { async: true };
	let result = schema._zod.run({
		value,
		issues: []
	}, ctx);
	if (result instanceof Promise) result = await result;
	return result.issues.length ? failure(_Err, result.issues, ctx) : {
		success: true,
		data: result.value
	};
};
const COMPILE_INVALID = /* @__PURE__ */ Symbol.for("zod.compile.invalid");
const COMPILE_FALLBACK = /* @__PURE__ */ Symbol.for("zod.compile.fallback");
const validate = ((schema, value, _ctx) => {
	const validator = schema._zod.bag.validator;
	if (validator !== void 0) {
		if (validator(value) !== COMPILE_INVALID) return true;
		if (validator.definite === true && _ctx === void 0) return false;
	}
	return validateFallback(schema, value, _ctx);
});
function validateFallback(schema, value, _ctx) {
	const ctx = _ctx ? {
		..._ctx,
		async: false,
		abortEarly: true
	} : {
		async: false,
		abortEarly: true
	};
	const fallbackRun = schema._zod.bag.fallbackRun;
	let result;
	if (fallbackRun) {
		ctx[COMPILE_FALLBACK] = true;
		result = fallbackRun({
			value,
			issues: []
		}, ctx);
	} else result = schema._zod.run({
		value,
		issues: []
	}, ctx);
	if (result instanceof Promise) throw new $ZodAsyncError();
	return result.issues.length === 0;
}
const validateAsync$1 = async (schema, value, _ctx) => {
	const ctx = _ctx ? {
		..._ctx,
		async: true,
		abortEarly: true
	} : {
		async: true,
		abortEarly: true
	};
	let result = schema._zod.run({
		value,
		issues: []
	}, ctx);
	if (result instanceof Promise) result = await result;
	return result.issues.length === 0;
};
const _encode = (_Err) => {
	const parse = _parse(_Err);
	const fn = (schema, value, _ctx, _params) => {
		const ctx = _ctx ? {
			..._ctx,
			direction: "backward"
		} : { direction: "backward" };
		return parse(schema, value, ctx, finalizeParams(fn, _params));
	};
	return fn;
};
const _decode = (_Err) => {
	const parse = _parse(_Err);
	const fn = (schema, value, _ctx, _params) => {
		return parse(schema, value, _ctx, finalizeParams(fn, _params));
	};
	return fn;
};
const _encodeAsync = (_Err) => {
	const parseAsync = _parseAsync(_Err);
	const fn = async (schema, value, _ctx, _params) => {
		const ctx = _ctx ? {
			..._ctx,
			direction: "backward"
		} : { direction: "backward" };
		return await parseAsync(schema, value, ctx, finalizeParams(fn, _params));
	};
	return fn;
};
const _decodeAsync = (_Err) => {
	const parseAsync = _parseAsync(_Err);
	const fn = async (schema, value, _ctx, _params) => {
		return await parseAsync(schema, value, _ctx, finalizeParams(fn, _params));
	};
	return fn;
};
const _safeEncode = (_Err) => (schema, value, _ctx) => {
	const ctx = _ctx ? {
		..._ctx,
		direction: "backward"
	} : { direction: "backward" };
	return _safeParse(_Err)(schema, value, ctx);
};
const _safeDecode = (_Err) => (schema, value, _ctx) => {
	return _safeParse(_Err)(schema, value, _ctx);
};
const _safeEncodeAsync = (_Err) => async (schema, value, _ctx) => {
	const ctx = _ctx ? {
		..._ctx,
		direction: "backward"
	} : { direction: "backward" };
	return _safeParseAsync(_Err)(schema, value, ctx);
};
const _safeDecodeAsync = (_Err) => async (schema, value, _ctx) => {
	return _safeParseAsync(_Err)(schema, value, _ctx);
};
// node_modules/zod/v4/core/regexes.js
/**
* @deprecated CUID v1 is deprecated by its authors due to information leakage
* (timestamps embedded in the id). Use {@link cuid2} instead.
* See https://github.com/paralleldrive/cuid.
*/
const cuid = /^[cC][0-9a-z]{6,}$/;
const cuid2 = /^[0-9a-z]+$/;
const ulid = /^[0-7][0-9A-HJKMNP-TV-Za-hjkmnp-tv-z]{25}$/;
const xid = /^[0-9a-vA-V]{20}$/;
const ksuid = /^[A-Za-z0-9]{27}$/;
const nanoid = /^[a-zA-Z0-9_-]{21}$/;
function nanoidOfLength(length) {
	return new RegExp(`^[a-zA-Z0-9_-]{${length}}$`);
}
/** ISO 8601-1 duration regex. Does not support the 8601-2 extensions like negative durations or fractional/negative components. */
const duration = /^P(?:(\d+W)|(?!.*W)(?=\d|T\d)(\d+Y)?(\d+M)?(\d+D)?(T(?=\d)(\d+H)?(\d+M)?(\d+([.,]\d+)?S)?)?)$/;
/** A regex for any UUID-like identifier: 8-4-4-4-12 hex pattern */
const guid = /^([0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12})$/;
/** Returns a regex for validating an RFC 9562/4122 UUID.
*
* @param version Optionally specify a version 1-8. If no version is specified, all versions are supported. */
const uuid = (version) => {
	if (!version) return /^([0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[1-8][0-9a-fA-F]{3}-[89abAB][0-9a-fA-F]{3}-[0-9a-fA-F]{12}|00000000-0000-0000-0000-000000000000|ffffffff-ffff-ffff-ffff-ffffffffffff)$/;
	return new RegExp(`^([0-9a-fA-F]{8}-[0-9a-fA-F]{4}-${version}[0-9a-fA-F]{3}-[89abAB][0-9a-fA-F]{3}-[0-9a-fA-F]{12})$`);
};
/** Practical email validation */
const email = /^(?:[A-Za-z0-9_'+\-]+\.)*[A-Za-z0-9_'+\-]*[A-Za-z0-9_+-]@(?:[A-Za-z0-9][A-Za-z0-9\-]*\.)+[A-Za-z]{2,}$/;
const _emoji$1 = `^(?=[\\s\\S]*[\\p{Extended_Pictographic}\\p{Regional_Indicator}\\u20E3])[\\p{Extended_Pictographic}\\p{Emoji_Component}]+$`;
function emoji() {
	return new RegExp(_emoji$1, "u");
}
const ipv4 = /^(?:(?:25[0-5]|2[0-4][0-9]|1[0-9][0-9]|[1-9][0-9]|[0-9])\.){3}(?:25[0-5]|2[0-4][0-9]|1[0-9][0-9]|[1-9][0-9]|[0-9])$/;
const ipv6 = /^(([0-9a-fA-F]{1,4}:){7}[0-9a-fA-F]{1,4}|([0-9a-fA-F]{1,4}:){1,7}:|([0-9a-fA-F]{1,4}:){1,6}:[0-9a-fA-F]{1,4}|([0-9a-fA-F]{1,4}:){1,5}(:[0-9a-fA-F]{1,4}){1,2}|([0-9a-fA-F]{1,4}:){1,4}(:[0-9a-fA-F]{1,4}){1,3}|([0-9a-fA-F]{1,4}:){1,3}(:[0-9a-fA-F]{1,4}){1,4}|([0-9a-fA-F]{1,4}:){1,2}(:[0-9a-fA-F]{1,4}){1,5}|[0-9a-fA-F]{1,4}:((:[0-9a-fA-F]{1,4}){1,6})|:((:[0-9a-fA-F]{1,4}){1,7}|:))$/;
const cidrv4 = /^((25[0-5]|2[0-4][0-9]|1[0-9][0-9]|[1-9][0-9]|[0-9])\.){3}(25[0-5]|2[0-4][0-9]|1[0-9][0-9]|[1-9][0-9]|[0-9])\/([0-9]|[1-2][0-9]|3[0-2])$/;
const cidrv6 = /^(([0-9a-fA-F]{1,4}:){7}[0-9a-fA-F]{1,4}|([0-9a-fA-F]{1,4}:){1,7}:|([0-9a-fA-F]{1,4}:){1,6}:[0-9a-fA-F]{1,4}|([0-9a-fA-F]{1,4}:){1,5}(:[0-9a-fA-F]{1,4}){1,2}|([0-9a-fA-F]{1,4}:){1,4}(:[0-9a-fA-F]{1,4}){1,3}|([0-9a-fA-F]{1,4}:){1,3}(:[0-9a-fA-F]{1,4}){1,4}|([0-9a-fA-F]{1,4}:){1,2}(:[0-9a-fA-F]{1,4}){1,5}|[0-9a-fA-F]{1,4}:((:[0-9a-fA-F]{1,4}){1,6})|:((:[0-9a-fA-F]{1,4}){1,7}|:))\/(12[0-8]|1[01][0-9]|[1-9]?[0-9])$/;
const base64 = /^$|^(?:[0-9a-zA-Z+/]{4})*(?:(?:[0-9a-zA-Z+/]{2}==)|(?:[0-9a-zA-Z+/]{3}=))?$/;
const base64url = /^(?:[A-Za-z0-9_-]{4})*(?:[A-Za-z0-9_-]{2,3})?$/;
const httpProtocol = /^https?$/;
const e164 = /^\+[1-9]\d{6,14}$/;
const dateSource = `(?:(?:\\d\\d[2468][048]|\\d\\d[13579][26]|\\d\\d0[48]|[02468][048]00|[13579][26]00)-02-29|\\d{4}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12]\\d|3[01])|(?:0[469]|11)-(?:0[1-9]|[12]\\d|30)|(?:02)-(?:0[1-9]|1\\d|2[0-8])))`;
/** Anchors a pattern source. The interpolation lives here rather than at the call site because
* esbuild will not drop a `@__PURE__` call whose own argument interpolates a variable, but it
* will drop `anchor(dateSource)`. Keeping it inline pinned `date` into every bundle. */
function anchor(source) {
	return new RegExp(`^${source}$`);
}
const date = /*@__PURE__*/ anchor(dateSource);
function timeSource(args) {
	const hhmm = `(?:[01]\\d|2[0-3]):[0-5]\\d`;
	return typeof args.precision === "number" ? args.precision === -1 ? `${hhmm}` : args.precision === 0 ? `${hhmm}:[0-5]\\d` : `${hhmm}:[0-5]\\d\\.\\d{${args.precision}}` : args.seconds ? `${hhmm}:[0-5]\\d(?:\\.\\d+)?` : `${hhmm}(?::[0-5]\\d(?:\\.\\d+)?)?`;
}
function time(args) {
	return new RegExp(`^${timeSource(args)}$`);
}
function datetime(args) {
	const opts = ["Z"];
	if (args.offset) opts.push(`([+-](?:[01]\\d|2[0-3]):[0-5]\\d)`);
	const qualified = `${timeSource({
		precision: args.precision,
		seconds: true
	})}(?:${opts.join("|")})`;
	const timeRegex = args.local ? `${qualified}|${timeSource({ precision: args.precision })}` : qualified;
	return new RegExp(`^${dateSource}T(?:${timeRegex})$`);
}
const anyString = /^[\s\S]{0,}$/;
const integer = /^-?\d+$/;
const number$2 = /^-?\d+(?:\.\d+)?$/;
const boolean$1 = /^(?:true|false)$/i;
const lowercase = /^[^A-Z]*$/;
const uppercase = /^[^a-z]*$/;
// node_modules/zod/v4/core/checks.js
const $ZodCheck = /*@__PURE__*/ $constructor("$ZodCheck", (inst, def) => {
	var _a;
	inst._zod ?? (inst._zod = {});
	inst._zod.def = def;
	(_a = inst._zod).onattach ?? (_a.onattach = []);
});
/** Default `when` for length-based checks: run only on non-nullish values with a `length`. */
const _whenHasLength = (payload) => {
	const val = payload.value;
	return !nullish(val) && val.length !== void 0;
};
const numericOriginMap = {
	number: "number",
	bigint: "bigint",
	object: "date"
};
const $ZodCheckLessThan = /*@__PURE__*/ $constructor("$ZodCheckLessThan", (inst, def) => {
	$ZodCheck.init(inst, def);
	const origin = numericOriginMap[typeof def.value];
	inst._zod.check = (payload) => {
		if (def.inclusive ? payload.value <= def.value : payload.value < def.value) return;
		payload.issues.push({
			origin: numericOriginMap[typeof payload.value] ?? origin,
			code: "too_big",
			maximum: typeof def.value === "object" ? def.value.getTime() : def.value,
			input: payload.value,
			inclusive: def.inclusive,
			inst,
			continue: !def.abort
		});
	};
});
const $ZodCheckGreaterThan = /*@__PURE__*/ $constructor("$ZodCheckGreaterThan", (inst, def) => {
	$ZodCheck.init(inst, def);
	const origin = numericOriginMap[typeof def.value];
	inst._zod.check = (payload) => {
		if (def.inclusive ? payload.value >= def.value : payload.value > def.value) return;
		payload.issues.push({
			origin: numericOriginMap[typeof payload.value] ?? origin,
			code: "too_small",
			minimum: typeof def.value === "object" ? def.value.getTime() : def.value,
			input: payload.value,
			inclusive: def.inclusive,
			inst,
			continue: !def.abort
		});
	};
});
const $ZodCheckMultipleOf = /*@__PURE__*/ $constructor("$ZodCheckMultipleOf", (inst, def) => {
	$ZodCheck.init(inst, def);
	inst._zod.check = (payload) => {
		if (typeof payload.value !== typeof def.value) throw new Error("Cannot mix number and bigint in multiple_of check.");
		if (typeof payload.value === "bigint" ? def.value !== BigInt(0) && payload.value % def.value === BigInt(0) : floatSafeRemainder(payload.value, def.value) === 0) return;
		payload.issues.push({
			origin: typeof payload.value,
			code: "not_multiple_of",
			divisor: def.value,
			input: payload.value,
			inst,
			continue: !def.abort
		});
	};
});
const $ZodCheckNumberFormat = /*@__PURE__*/ $constructor("$ZodCheckNumberFormat", (inst, def) => {
	$ZodCheck.init(inst, def);
	def.format = def.format || "float64";
	const isInt = def.format?.includes("int");
	const origin = isInt ? "int" : "number";
	const [minimum, maximum] = NUMBER_FORMAT_RANGES[def.format];
	inst._zod.check = (payload) => {
		const input = payload.value;
		if (isInt) {
			if (!Number.isInteger(input)) {
				payload.issues.push({
					expected: origin,
					format: def.format,
					code: "invalid_type",
					continue: false,
					input,
					inst
				});
				return;
			}
			if (!Number.isSafeInteger(input)) {
				if (input > 0) payload.issues.push({
					input,
					code: "too_big",
					maximum: Number.MAX_SAFE_INTEGER,
					note: "Integers must be within the safe integer range.",
					inst,
					origin,
					inclusive: true,
					continue: !def.abort
				});
				else payload.issues.push({
					input,
					code: "too_small",
					minimum: Number.MIN_SAFE_INTEGER,
					note: "Integers must be within the safe integer range.",
					inst,
					origin,
					inclusive: true,
					continue: !def.abort
				});
				return;
			}
		}
		if (input < minimum) payload.issues.push({
			origin: "number",
			input,
			code: "too_small",
			minimum,
			inclusive: true,
			inst,
			continue: !def.abort
		});
		if (input > maximum) payload.issues.push({
			origin: "number",
			input,
			code: "too_big",
			maximum,
			inclusive: true,
			inst,
			continue: !def.abort
		});
	};
});
const $ZodCheckMaxLength = /*@__PURE__*/ $constructor("$ZodCheckMaxLength", (inst, def) => {
	var _a;
	$ZodCheck.init(inst, def);
	(_a = inst._zod.def).when ?? (_a.when = _whenHasLength);
	inst._zod.check = (payload) => {
		const input = payload.value;
		const units = input.length;
		if ((typeof input === "string" && units > def.maximum ? codePointLength(input) : units) <= def.maximum) return;
		const origin = getLengthableOrigin(input);
		payload.issues.push({
			origin,
			code: "too_big",
			maximum: def.maximum,
			inclusive: true,
			input,
			inst,
			continue: !def.abort
		});
	};
});
const $ZodCheckMinLength = /*@__PURE__*/ $constructor("$ZodCheckMinLength", (inst, def) => {
	var _a;
	$ZodCheck.init(inst, def);
	(_a = inst._zod.def).when ?? (_a.when = _whenHasLength);
	inst._zod.check = (payload) => {
		const input = payload.value;
		const units = input.length;
		if ((typeof input === "string" && units >= def.minimum && units < def.minimum * 2 ? codePointLength(input) : units) >= def.minimum) return;
		const origin = getLengthableOrigin(input);
		payload.issues.push({
			origin,
			code: "too_small",
			minimum: def.minimum,
			inclusive: true,
			input,
			inst,
			continue: !def.abort
		});
	};
});
const $ZodCheckLengthEquals = /*@__PURE__*/ $constructor("$ZodCheckLengthEquals", (inst, def) => {
	var _a;
	$ZodCheck.init(inst, def);
	(_a = inst._zod.def).when ?? (_a.when = _whenHasLength);
	inst._zod.check = (payload) => {
		const input = payload.value;
		const units = input.length;
		const length = typeof input === "string" && units >= def.length && units <= def.length * 2 ? codePointLength(input) : units;
		if (length === def.length) return;
		const origin = getLengthableOrigin(input);
		const tooBig = length > def.length;
		payload.issues.push({
			origin,
			...tooBig ? {
				code: "too_big",
				maximum: def.length
			} : {
				code: "too_small",
				minimum: def.length
			},
			inclusive: true,
			exact: true,
			input: payload.value,
			inst,
			continue: !def.abort
		});
	};
});
const $ZodCheckStringFormat = /*@__PURE__*/ $constructor("$ZodCheckStringFormat", (inst, def) => {
	var _a, _b;
	$ZodCheck.init(inst, def);
	if (def.pattern) (_a = inst._zod).check ?? (_a.check = (payload) => {
		def.pattern.lastIndex = 0;
		if (def.pattern.test(payload.value)) return;
		payload.issues.push({
			origin: "string",
			code: "invalid_format",
			format: def.format,
			input: payload.value,
			...def.pattern ? { pattern: def.pattern.toString() } : {},
			inst,
			continue: !def.abort
		});
	});
	else (_b = inst._zod).check ?? (_b.check = () => {});
});
const $ZodCheckRegex = /*@__PURE__*/ $constructor("$ZodCheckRegex", (inst, def) => {
	$ZodCheckStringFormat.init(inst, def);
	inst._zod.check = (payload) => {
		def.pattern.lastIndex = 0;
		if (def.pattern.test(payload.value)) return;
		payload.issues.push({
			origin: "string",
			code: "invalid_format",
			format: "regex",
			input: payload.value,
			pattern: def.pattern.toString(),
			inst,
			continue: !def.abort
		});
	};
});
const $ZodCheckLowerCase = /*@__PURE__*/ $constructor("$ZodCheckLowerCase", (inst, def) => {
	def.pattern ?? (def.pattern = lowercase);
	$ZodCheckStringFormat.init(inst, def);
});
const $ZodCheckUpperCase = /*@__PURE__*/ $constructor("$ZodCheckUpperCase", (inst, def) => {
	def.pattern ?? (def.pattern = uppercase);
	$ZodCheckStringFormat.init(inst, def);
});
const $ZodCheckIncludes = /*@__PURE__*/ $constructor("$ZodCheckIncludes", (inst, def) => {
	$ZodCheck.init(inst, def);
	const escapedRegex = escapeRegex(def.includes);
	def.pattern = new RegExp(typeof def.position === "number" ? `^.{${def.position},}${escapedRegex}` : escapedRegex);
	inst._zod.check = (payload) => {
		if (payload.value.includes(def.includes, def.position)) return;
		payload.issues.push({
			origin: "string",
			code: "invalid_format",
			format: "includes",
			includes: def.includes,
			input: payload.value,
			inst,
			continue: !def.abort
		});
	};
});
const $ZodCheckStartsWith = /*@__PURE__*/ $constructor("$ZodCheckStartsWith", (inst, def) => {
	$ZodCheck.init(inst, def);
	const pattern = new RegExp(`^${escapeRegex(def.prefix)}.*`);
	def.pattern ?? (def.pattern = pattern);
	inst._zod.check = (payload) => {
		if (payload.value.startsWith(def.prefix)) return;
		payload.issues.push({
			origin: "string",
			code: "invalid_format",
			format: "starts_with",
			prefix: def.prefix,
			input: payload.value,
			inst,
			continue: !def.abort
		});
	};
});
const $ZodCheckEndsWith = /*@__PURE__*/ $constructor("$ZodCheckEndsWith", (inst, def) => {
	$ZodCheck.init(inst, def);
	const pattern = new RegExp(`.*${escapeRegex(def.suffix)}$`);
	def.pattern ?? (def.pattern = pattern);
	inst._zod.check = (payload) => {
		if (payload.value.endsWith(def.suffix)) return;
		payload.issues.push({
			origin: "string",
			code: "invalid_format",
			format: "ends_with",
			suffix: def.suffix,
			input: payload.value,
			inst,
			continue: !def.abort
		});
	};
});
const $ZodCheckOverwrite = /*@__PURE__*/ $constructor("$ZodCheckOverwrite", (inst, def) => {
	$ZodCheck.init(inst, def);
	inst._zod.check = (payload) => {
		payload.value = def.tx(payload.value);
	};
});
// node_modules/zod/v4/core/doc.js
var Doc = class {
	constructor(args = [], closed = {}) {
		this.content = [];
		this.indent = 0;
		this.args = args;
		this.closed = closed;
	}
	indented(fn) {
		this.indent += 1;
		try {
			fn(this);
		} finally {
			this.indent -= 1;
		}
	}
	write(arg) {
		if (typeof arg === "function") {
			arg(this, { execution: "sync" });
			arg(this, { execution: "async" });
			return;
		}
		const lines = arg.split("\n").filter((x) => x);
		const minIndent = Math.min(...lines.map((x) => x.length - x.trimStart().length));
		const dedented = lines.map((x) => x.slice(minIndent)).map((x) => " ".repeat(this.indent * 2) + x);
		for (const line of dedented) this.content.push(line);
	}
	compile() {
		const F = Function;
		const content = this?.content ?? [``];
		return new F(...Object.keys(this.closed), `return function (${this.args.join(", ")}) {\n${content.join("\n")}\n};`)(...Object.values(this.closed));
	}
};
// node_modules/zod/v4/core/versions.js
const version$2 = {
	major: 4,
	minor: 6,
	patch: 7
};
// node_modules/zod/v4/core/schemas.js
const $ZodType = /*@__PURE__*/ $constructor("$ZodType", (inst, def) => {
	var _a;
	inst ?? (inst = {});
	inst._zod.def = def;
	inst._zod.bag = inst._zod.bag || {};
	inst._zod.version = version$2;
	const defChecks = inst._zod.def.checks;
	const checks = inst._zod.traits.has("$ZodCheck") ? [inst, ...defChecks ?? []] : defChecks?.length ? [...defChecks] : [];
	for (const ch of checks) for (const fn of ch._zod.onattach) fn(inst);
	if (checks.length === 0) {
		(_a = inst._zod).deferred ?? (_a.deferred = []);
		inst._zod.deferred?.push(() => {
			inst._zod.run = inst._zod.parse;
		});
	} else {
		const runChecks = (payload, checks, ctx) => {
			if (payload.memo) return payload;
			let isAborted = aborted(payload);
			let asyncResult;
			for (const ch of checks) {
				if (ch._zod.def.when) {
					if (explicitlyAborted(payload)) continue;
					if (!ch._zod.def.when(payload)) continue;
				} else if (isAborted) continue;
				const currLen = payload.issues.length;
				const _ = ch._zod.check(payload);
				if (_ instanceof Promise && ctx?.async === false) throw new $ZodAsyncError();
				if (asyncResult || _ instanceof Promise) asyncResult = (asyncResult ?? Promise.resolve()).then(async () => {
					await _;
					if (payload.issues.length === currLen) return;
					attachSchema(payload.issues, currLen, inst);
					if (!isAborted) isAborted = aborted(payload, currLen);
				});
				else {
					if (payload.issues.length === currLen) continue;
					attachSchema(payload.issues, currLen, inst);
					if (!isAborted) isAborted = aborted(payload, currLen);
				}
			}
			if (asyncResult) return asyncResult.then(() => {
				return payload;
			});
			return payload;
		};
		const handleCanaryResult = (canary, payload, ctx) => {
			if (aborted(canary)) {
				canary.aborted = true;
				return canary;
			}
			const checkResult = runChecks(payload, checks, ctx);
			if (checkResult instanceof Promise) {
				if (ctx.async === false) throw new $ZodAsyncError();
				return checkResult.then((checkResult) => inst._zod.parse(checkResult, ctx));
			}
			return inst._zod.parse(checkResult, ctx);
		};
		inst._zod.run = (payload, ctx) => {
			if (ctx.skipChecks) return inst._zod.parse(payload, ctx);
			if (ctx.direction === "backward") {
				const canary = inst._zod.parse({
					value: payload.value,
					issues: []
				}, {
					...ctx,
					skipChecks: true
				});
				if (canary instanceof Promise) return canary.then((canary) => {
					return handleCanaryResult(canary, payload, ctx);
				});
				return handleCanaryResult(canary, payload, ctx);
			}
			const result = inst._zod.parse(payload, ctx);
			if (result instanceof Promise) {
				if (ctx.async === false) throw new $ZodAsyncError();
				return result.then((result) => runChecks(result, checks, ctx));
			}
			return runChecks(result, checks, ctx);
		};
	}
}, {
	get "~standard"() {
		return hide(this, "~standard", standardProps(this));
	},
	set "~standard"(value) {
		own(this, "~standard", value);
	}
});
/** The Standard Schema surface for `inst`. Shared so wrappers can extend it without forcing it. */
const toStandardResult = (r, ctx) => r.issues.length ? { issues: r.issues.map((iss) => finalizeIssue(iss, ctx, config())) } : { value: r.value };
async function validateAsync(inst, value) {
	const ctx = { async: true };
	return toStandardResult(await inst._zod.run({
		value,
		issues: []
	}, ctx), ctx);
}
function standardProps(inst) {
	return {
		validate: (value) => {
			const ctx = { async: false };
			try {
				const r = inst._zod.run({
					value,
					issues: []
				}, ctx);
				if (!(r instanceof Promise)) return toStandardResult(r, ctx);
			} catch (_) {}
			return validateAsync(inst, value);
		},
		vendor: "zod",
		version: 1
	};
}
const $ZodString = /*@__PURE__*/ $constructor("$ZodString", (inst, def) => {
	$ZodType.init(inst, def);
	inst._zod.pattern = def.pattern ?? anyString;
	inst._zod.parse = (payload, _) => {
		if (def.coerce) try {
			payload.value = String(payload.value);
		} catch (_) {}
		if (typeof payload.value === "string") return payload;
		payload.issues.push({
			expected: "string",
			code: "invalid_type",
			input: payload.value,
			inst
		});
		return payload;
	};
});
const $ZodStringFormat = /*@__PURE__*/ $constructor("$ZodStringFormat", (inst, def) => {
	$ZodCheckStringFormat.init(inst, def);
	$ZodString.init(inst, def);
});
const $ZodGUID = /*@__PURE__*/ $constructor("$ZodGUID", (inst, def) => {
	def.pattern ?? (def.pattern = guid);
	$ZodStringFormat.init(inst, def);
});
const $ZodUUID = /*@__PURE__*/ $constructor("$ZodUUID", (inst, def) => {
	if (def.version) {
		const v = {
			v1: 1,
			v2: 2,
			v3: 3,
			v4: 4,
			v5: 5,
			v6: 6,
			v7: 7,
			v8: 8
		}[def.version];
		if (v === void 0) throw new Error(`Invalid UUID version: "${def.version}"`);
		def.pattern ?? (def.pattern = uuid(v));
	} else def.pattern ?? (def.pattern = uuid());
	$ZodStringFormat.init(inst, def);
});
const $ZodEmail = /*@__PURE__*/ $constructor("$ZodEmail", (inst, def) => {
	def.pattern ?? (def.pattern = email);
	$ZodStringFormat.init(inst, def);
});
function canParseURL(input) {
	try {
		if (typeof URL !== "undefined" && typeof URL.canParse === "function") return URL.canParse(input);
		new URL(input);
		return true;
	} catch {
		return false;
	}
}
function validateURL(trimmed, def) {
	if (!("normalize" in def) && !("hostname" in def) && !("protocol" in def)) return canParseURL(trimmed) || 2;
	return parseURLObject(trimmed, def);
}
/** Parses a URL while preserving the non-normalizing HTTP guard. */
function parseURLObject(trimmed, def) {
	if (!def.normalize && def.protocol?.source === httpProtocol.source && !/^https?:\/\//i.test(trimmed)) return 1;
	try {
		if (typeof URL !== "undefined") {
			const URLStatic = URL;
			if (typeof URLStatic.parse === "function") return URLStatic.parse(trimmed) ?? 2;
		}
		return new URL(trimmed);
	} catch {
		return 2;
	}
}
const asciiTabOrNewline = /[\t\n\r]/g;
/** The URL parser deletes every ASCII tab, LF and CR from its input before it parses, so `new URL("https://exa\nmple.com")` reports on `example.com`. Applying the same deletion to the returned value closes the half of that divergence which can move the host; the parser's other rewrite, stripping C0 controls at the edges, cannot. */
function stripTabAndNewline(value) {
	return value.replace(asciiTabOrNewline, "");
}
function urlHostnameOk(url, hostname) {
	hostname.lastIndex = 0;
	return hostname.test(url.hostname);
}
function urlProtocolOk(url, protocol) {
	protocol.lastIndex = 0;
	return protocol.test(url.protocol.endsWith(":") ? url.protocol.slice(0, -1) : url.protocol);
}
const $ZodURL = /*@__PURE__*/ $constructor("$ZodURL", (inst, def) => {
	$ZodStringFormat.init(inst, def);
	inst._zod.check = (payload) => {
		try {
			const trimmed = payload.value.trim();
			const url = validateURL(trimmed, def);
			if (url === 1) {
				payload.issues.push({
					code: "invalid_format",
					format: "url",
					note: "Invalid URL format",
					input: payload.value,
					inst,
					continue: !def.abort
				});
				return;
			}
			if (url === 2) {
				payload.issues.push({
					code: "invalid_format",
					format: "url",
					input: payload.value,
					inst,
					continue: !def.abort
				});
				return;
			}
			if (url === true) {
				payload.value = stripTabAndNewline(trimmed);
				return;
			}
			if (def.hostname && !urlHostnameOk(url, def.hostname)) payload.issues.push({
				code: "invalid_format",
				format: "url",
				note: "Invalid hostname",
				pattern: def.hostname.source,
				input: payload.value,
				inst,
				continue: !def.abort
			});
			if (def.protocol && !urlProtocolOk(url, def.protocol)) payload.issues.push({
				code: "invalid_format",
				format: "url",
				note: "Invalid protocol",
				pattern: def.protocol.source,
				input: payload.value,
				inst,
				continue: !def.abort
			});
			payload.value = def.normalize ? url.href : stripTabAndNewline(trimmed);
			return;
		} catch (_) {
			payload.issues.push({
				code: "invalid_format",
				format: "url",
				input: payload.value,
				inst,
				continue: !def.abort
			});
		}
	};
});
const $ZodEmoji = /*@__PURE__*/ $constructor("$ZodEmoji", (inst, def) => {
	def.pattern ?? (def.pattern = emoji());
	$ZodStringFormat.init(inst, def);
});
const $ZodNanoID = /*@__PURE__*/ $constructor("$ZodNanoID", (inst, def) => {
	if (def.length !== void 0 && (!Number.isInteger(def.length) || def.length < 1)) throw new Error(`Invalid nanoid length: ${def.length}`);
	def.pattern ?? (def.pattern = def.length === void 0 ? nanoid : nanoidOfLength(def.length));
	$ZodStringFormat.init(inst, def);
});
/**
* @deprecated CUID v1 is deprecated by its authors due to information leakage
* (timestamps embedded in the id). Use {@link $ZodCUID2} instead.
* See https://github.com/paralleldrive/cuid.
*/
const $ZodCUID = /*@__PURE__*/ $constructor("$ZodCUID", (inst, def) => {
	def.pattern ?? (def.pattern = cuid);
	$ZodStringFormat.init(inst, def);
});
const $ZodCUID2 = /*@__PURE__*/ $constructor("$ZodCUID2", (inst, def) => {
	def.pattern ?? (def.pattern = cuid2);
	$ZodStringFormat.init(inst, def);
});
const $ZodULID = /*@__PURE__*/ $constructor("$ZodULID", (inst, def) => {
	def.pattern ?? (def.pattern = ulid);
	$ZodStringFormat.init(inst, def);
});
const $ZodXID = /*@__PURE__*/ $constructor("$ZodXID", (inst, def) => {
	def.pattern ?? (def.pattern = xid);
	$ZodStringFormat.init(inst, def);
});
const $ZodKSUID = /*@__PURE__*/ $constructor("$ZodKSUID", (inst, def) => {
	def.pattern ?? (def.pattern = ksuid);
	$ZodStringFormat.init(inst, def);
});
const $ZodISODateTime = /*@__PURE__*/ $constructor("$ZodISODateTime", (inst, def) => {
	def.pattern ?? (def.pattern = datetime(def));
	$ZodStringFormat.init(inst, def);
});
const $ZodISODate = /*@__PURE__*/ $constructor("$ZodISODate", (inst, def) => {
	def.pattern ?? (def.pattern = date);
	$ZodStringFormat.init(inst, def);
});
const $ZodISOTime = /*@__PURE__*/ $constructor("$ZodISOTime", (inst, def) => {
	def.pattern ?? (def.pattern = time(def));
	$ZodStringFormat.init(inst, def);
});
const $ZodISODuration = /*@__PURE__*/ $constructor("$ZodISODuration", (inst, def) => {
	def.pattern ?? (def.pattern = duration);
	$ZodStringFormat.init(inst, def);
});
const $ZodIPv4 = /*@__PURE__*/ $constructor("$ZodIPv4", (inst, def) => {
	def.pattern ?? (def.pattern = ipv4);
	$ZodStringFormat.init(inst, def);
});
/** An IPv6 address is written with hex digits, colons and dots, and nothing else. The guard is what makes the check below an IPv6 check: `new URL("http://[...]")` parses an authority, not an address, so `@` and `\` re-delimit it and `"::@1\\"` validates against the host `0.0.0.1`. The URL parser also deletes ASCII tab, LF and CR rather than failing, which is how `"::1\n"` validated as `::1`. */
const ipv6Alphabet = /^[0-9a-fA-F:.]+$/;
function isValidIPv6(value) {
	if (!ipv6Alphabet.test(value)) return false;
	return canParseURL(`http://[${value}]`);
}
const $ZodIPv6 = /*@__PURE__*/ $constructor("$ZodIPv6", (inst, def) => {
	def.pattern ?? (def.pattern = ipv6);
	$ZodStringFormat.init(inst, def);
	inst._zod.check = (payload) => {
		if (!isValidIPv6(payload.value)) payload.issues.push({
			code: "invalid_format",
			format: "ipv6",
			input: payload.value,
			inst,
			continue: !def.abort
		});
	};
});
const $ZodCIDRv4 = /*@__PURE__*/ $constructor("$ZodCIDRv4", (inst, def) => {
	def.pattern ?? (def.pattern = cidrv4);
	$ZodStringFormat.init(inst, def);
});
function isValidCIDRv6(value) {
	const parts = value.split("/");
	if (parts.length !== 2) return false;
	const [address, prefix] = parts;
	if (!prefix) return false;
	const prefixNum = Number(prefix);
	if (`${prefixNum}` !== prefix) return false;
	if (prefixNum < 0 || prefixNum > 128) return false;
	return isValidIPv6(address);
}
const $ZodCIDRv6 = /*@__PURE__*/ $constructor("$ZodCIDRv6", (inst, def) => {
	def.pattern ?? (def.pattern = cidrv6);
	$ZodStringFormat.init(inst, def);
	inst._zod.check = (payload) => {
		if (!isValidCIDRv6(payload.value)) payload.issues.push({
			code: "invalid_format",
			format: "cidrv6",
			input: payload.value,
			inst,
			continue: !def.abort
		});
	};
});
function isValidBase64(data) {
	if (data === "") return true;
	if (/\s/.test(data)) return false;
	if (data.length % 4 !== 0) return false;
	try {
		atob(data);
		return true;
	} catch {
		return false;
	}
}
const base64Charset = /^[0-9a-zA-Z+/]*={0,2}$/;
const $ZodBase64 = /*@__PURE__*/ $constructor("$ZodBase64", (inst, def) => {
	def.pattern ?? (def.pattern = base64Charset);
	$ZodStringFormat.init(inst, def);
	inst._zod.check = (payload) => {
		if (isValidBase64(payload.value)) return;
		payload.issues.push({
			code: "invalid_format",
			format: "base64",
			input: payload.value,
			inst,
			continue: !def.abort
		});
	};
});
const base64urlCharset = /^[A-Za-z0-9_-]*$/;
function isValidBase64URL(data) {
	if (!base64urlCharset.test(data)) return false;
	const base64 = data.replace(/[-_]/g, (c) => c === "-" ? "+" : "/");
	return isValidBase64(base64.padEnd(Math.ceil(base64.length / 4) * 4, "="));
}
const $ZodBase64URL = /*@__PURE__*/ $constructor("$ZodBase64URL", (inst, def) => {
	def.pattern ?? (def.pattern = base64urlCharset);
	$ZodStringFormat.init(inst, def);
	inst._zod.check = (payload) => {
		if (isValidBase64URL(payload.value)) return;
		payload.issues.push({
			code: "invalid_format",
			format: "base64url",
			input: payload.value,
			inst,
			continue: !def.abort
		});
	};
});
const $ZodE164 = /*@__PURE__*/ $constructor("$ZodE164", (inst, def) => {
	def.pattern ?? (def.pattern = e164);
	$ZodStringFormat.init(inst, def);
});
function isValidJWT(token, algorithm = null) {
	try {
		const tokensParts = token.split(".");
		if (tokensParts.length !== 3) return false;
		const [header] = tokensParts;
		if (!header) return false;
		const parsedHeader = JSON.parse(atob(header));
		if ("typ" in parsedHeader && parsedHeader?.typ !== "JWT") return false;
		if (!parsedHeader.alg) return false;
		if (algorithm && (!("alg" in parsedHeader) || parsedHeader.alg !== algorithm)) return false;
		return true;
	} catch {
		return false;
	}
}
const $ZodJWT = /*@__PURE__*/ $constructor("$ZodJWT", (inst, def) => {
	$ZodStringFormat.init(inst, def);
	inst._zod.check = (payload) => {
		if (isValidJWT(payload.value, def.alg)) return;
		payload.issues.push({
			code: "invalid_format",
			format: "jwt",
			input: payload.value,
			inst,
			continue: !def.abort
		});
	};
});
const $ZodNumber = /*@__PURE__*/ $constructor("$ZodNumber", (inst, def) => {
	$ZodType.init(inst, def);
	inst._zod.pattern = number$2;
	inst._zod.parse = (payload, _ctx) => {
		if (def.coerce) try {
			payload.value = Number(payload.value);
		} catch (_) {}
		const input = payload.value;
		if (typeof input === "number" && !Number.isNaN(input) && Number.isFinite(input)) return payload;
		const received = typeof input === "number" ? Number.isNaN(input) ? "NaN" : !Number.isFinite(input) ? String(input) : void 0 : void 0;
		payload.issues.push({
			expected: "number",
			code: "invalid_type",
			input,
			inst,
			...received ? { received } : {}
		});
		return payload;
	};
});
const $ZodNumberFormat = /*@__PURE__*/ $constructor("$ZodNumberFormat", (inst, def) => {
	$ZodCheckNumberFormat.init(inst, def);
	$ZodNumber.init(inst, def);
});
const $ZodBoolean = /*@__PURE__*/ $constructor("$ZodBoolean", (inst, def) => {
	$ZodType.init(inst, def);
	inst._zod.pattern = boolean$1;
	inst._zod.parse = (payload, _ctx) => {
		if (def.coerce) try {
			payload.value = Boolean(payload.value);
		} catch (_) {}
		const input = payload.value;
		if (typeof input === "boolean") return payload;
		payload.issues.push({
			expected: "boolean",
			code: "invalid_type",
			input,
			inst
		});
		return payload;
	};
});
const $ZodUnknown = /*@__PURE__*/ $constructor("$ZodUnknown", (inst, def) => {
	$ZodType.init(inst, def);
	inst._zod.parse = (payload) => payload;
});
const $ZodNever = /*@__PURE__*/ $constructor("$ZodNever", (inst, def) => {
	$ZodType.init(inst, def);
	inst._zod.parse = (payload, _ctx) => {
		payload.issues.push({
			expected: "never",
			code: "invalid_type",
			input: payload.value,
			inst
		});
		return payload;
	};
});
function capSize(inst, size) {
	const caps = sizeCaps(inst._zod.def.checks);
	if (!caps.length) return;
	const cap = Math.min(...caps.map((c) => c[0]));
	const parse = inst._zod.parse;
	inst._zod.parse = (payload, ctx) => {
		const n = size(payload.value);
		if (n > cap && !ctx?.skipChecks && ctx?.direction !== "backward") {
			for (const [max, ch] of sizeCaps(inst._zod.def.checks)) if (n > max && ch._zod.def.when(payload)) {
				const start = payload.issues.length;
				ch._zod.check(payload);
				payload.issues[start].continue = false;
				attachSchema(payload.issues, start, inst);
				return payload;
			}
		}
		return parse(payload, ctx);
	};
}
const arraySize = (input) => Array.isArray(input) ? input.length : -1;
function handleArrayResult(result, final, index) {
	if (result.issues.length) final.issues.push(...prefixIssues(index, result.issues));
	final.value[index] = result.value;
}
const $ZodArray = /*@__PURE__*/ $constructor("$ZodArray", (inst, def) => {
	$ZodType.init(inst, def);
	const memo = globalConfig.memoizer;
	memo?.attach(inst);
	inst._zod.parse = (payload, ctx) => {
		const input = payload.value;
		if (!Array.isArray(input)) {
			payload.issues.push({
				expected: "array",
				code: "invalid_type",
				input,
				inst
			});
			return payload;
		}
		payload.value = memo ? memo.alloc(inst, payload, Array(input.length), ctx) : Array(input.length);
		const proms = [];
		const abortEarly = ctx?.abortEarly;
		for (let i = 0; i < input.length; i++) {
			const item = input[i];
			const result = def.element._zod.run({
				value: item,
				issues: []
			}, ctx);
			if (result instanceof Promise) proms.push(result.then((result) => handleArrayResult(result, payload, i)));
			else {
				handleArrayResult(result, payload, i);
				if (abortEarly && result.issues.length !== 0 && aborted(result)) break;
			}
		}
		if (proms.length) return Promise.all(proms).then(() => payload);
		return payload;
	};
	capSize(inst, arraySize);
});
function handlePropertyResult(result, final, key, input, optin, optout) {
	const isPresent = key in input;
	const isOptionalOut = optout === "optional";
	if (!isPresent && isOptionalOut && optin === "optional") return;
	if (result.issues.length) {
		if (optin !== void 0 && isOptionalOut && !isPresent) return;
		final.issues.push(...prefixIssues(key, result.issues));
	}
	if (!isPresent && optin === void 0) {
		if (!result.issues.length) final.issues.push({
			code: "invalid_type",
			expected: "nonoptional",
			input: void 0,
			path: [key]
		});
		return;
	}
	if (result.value === void 0) {
		if (isPresent || optin === "defaulted" && !isOptionalOut) final.value[key] = void 0;
	} else final.value[key] = result.value;
}
const NO_SYMBOL_KEYS = [];
function normalizeDef(def) {
	const keys = Object.keys(def.shape);
	const ownSymbols = Object.getOwnPropertySymbols(def.shape);
	const symbolKeys = ownSymbols.length ? ownSymbols : NO_SYMBOL_KEYS;
	const allKeys = symbolKeys.length ? [...keys, ...symbolKeys] : keys;
	for (const k of allKeys) if (!def.shape?.[k]?._zod?.traits?.has("$ZodType")) throw new Error(`Invalid element at key "${String(k)}": expected a Zod schema`);
	const okeys = optionalKeys(def.shape);
	return {
		...def,
		allKeys,
		symbolKeys,
		keySet: new Set(keys),
		numKeys: keys.length,
		optionalKeys: new Set(okeys)
	};
}
function handleCatchall(proms, input, payload, ctx, def, inst, abortEarly) {
	const unrecognized = [];
	const keySet = def.keySet;
	const _catchall = def.catchall._zod;
	const t = _catchall.def.type;
	const optin = _catchall.optin;
	const optout = _catchall.optout;
	let seen = 0;
	for (const key in input) {
		if (abortEarly && payload.issues.length !== seen) {
			if (aborted(payload, seen)) break;
			seen = payload.issues.length;
		}
		if (keySet.has(key)) continue;
		if (key === "__proto__") {
			if (t === "never") unrecognized.push(key);
			continue;
		}
		if (t === "never") {
			unrecognized.push(key);
			continue;
		}
		const r = _catchall.run({
			value: input[key],
			issues: []
		}, ctx);
		if (r instanceof Promise) proms.push(r.then((r) => handlePropertyResult(r, payload, key, input, optin, optout)));
		else handlePropertyResult(r, payload, key, input, optin, optout);
	}
	if (unrecognized.length) payload.issues.push({
		code: "unrecognized_keys",
		keys: unrecognized,
		input,
		inst,
		continue: true
	});
	if (!proms.length) return payload;
	return Promise.all(proms).then(() => {
		return payload;
	});
}
const $ZodObject = /*@__PURE__*/ $constructor("$ZodObject", (inst, def) => {
	$ZodType.init(inst, def);
	const desc = Object.getOwnPropertyDescriptor(def, "shape");
	const sh = desc?.get ? desc.get.raw : def.shape ?? {};
	if (sh) {
		const get = () => {
			const newSh = { ...sh };
			Object.defineProperty(def, "shape", { value: newSh });
			get.raw = newSh;
			return newSh;
		};
		get.raw = sh;
		Object.defineProperty(def, "shape", { get });
	}
	const _normalized = cached(() => normalizeDef(def));
	defineLazyInternal(inst, "propValues", (zod) => {
		const shape = zod.def.shape;
		const propValues = {};
		for (const key in shape) {
			const field = shape[key]._zod;
			if (field.values) {
				if (!Object.prototype.hasOwnProperty.call(propValues, key)) assignProp(propValues, key, /* @__PURE__ */ new Set());
				for (const v of field.values) propValues[key].add(v);
				if (field.optin !== void 0) propValues[key].add(void 0);
			}
		}
		return propValues;
	});
	const isObject$1 = isObject;
	const catchall = def.catchall;
	let value;
	const memo = globalConfig.memoizer;
	memo?.attach(inst);
	inst._zod.parse = (payload, ctx) => {
		value ?? (value = _normalized.value);
		const input = payload.value;
		if (!isObject$1(input)) {
			payload.issues.push({
				expected: "object",
				code: "invalid_type",
				input,
				inst
			});
			return payload;
		}
		payload.value = memo ? memo.alloc(inst, payload, {}, ctx) : {};
		const proms = [];
		const shape = value.shape;
		const abortEarly = ctx?.abortEarly;
		let seen = payload.issues.length;
		for (const key of value.allKeys) {
			if (abortEarly && payload.issues.length !== seen) {
				if (aborted(payload, seen)) break;
				seen = payload.issues.length;
			}
			if (key === "__proto__") continue;
			const el = shape[key];
			const optin = el._zod.optin;
			const optout = el._zod.optout;
			const r = el._zod.run({
				value: input[key],
				issues: []
			}, ctx);
			if (r instanceof Promise) proms.push(r.then((r) => handlePropertyResult(r, payload, key, input, optin, optout)));
			else handlePropertyResult(r, payload, key, input, optin, optout);
		}
		if (!catchall) return proms.length ? Promise.all(proms).then(() => payload) : payload;
		return handleCatchall(proms, input, payload, ctx, _normalized.value, inst, abortEarly === true);
	};
});
const $ZodObjectJIT = /*@__PURE__*/ $constructor("$ZodObjectJIT", (inst, def) => {
	$ZodObject.init(inst, def);
	const superParse = inst._zod.parse;
	const _normalized = cached(() => normalizeDef(def));
	const memo = globalConfig.memoizer;
	const generateFastpass = (shape) => {
		const normalized = _normalized.value;
		const syms = normalized.symbolKeys;
		const doc = new Doc(["payload", "ctx"], {
			shape,
			inst,
			memo,
			syms
		});
		const parseStr = (k) => `shape[${k}]._zod.run({ value: input[${k}], issues: [] }, ctx)`;
		const prefixStr = (id, k) => `
          let ${id}_ab = false;
          for (let i = 0; i < ${id}.issues.length; i++) {
            const iss = ${id}.issues[i];
            iss.path = iss.path ? [${k}, ...iss.path] : [${k}];
            payload.issues.push(iss);
            if (iss.continue !== true) ${id}_ab = true;
          }
          if (${id}_ab && ctx && ctx.abortEarly) {
            payload.value = newResult;
            return payload;
          }`;
		doc.write(`const input = payload.value;`);
		const ids = Object.create(null);
		let counter = 0;
		for (const key of normalized.allKeys) ids[key] = `key_${counter++}`;
		doc.write(memo ? `const newResult = memo.alloc(inst, payload, {}, ctx);` : `const newResult = {};`);
		for (const key of normalized.allKeys) {
			if (key === "__proto__") continue;
			const id = ids[key];
			const k = typeof key === "symbol" ? `syms[${syms.indexOf(key)}]` : esc(key);
			const isPresent = `${k} in input`;
			const schema = shape[key];
			const optin = schema?._zod?.optin;
			const isOptionalIn = optin !== void 0;
			const isOptionalOut = schema?._zod?.optout === "optional";
			doc.write(`const ${id} = ${parseStr(k)};`);
			if (isOptionalIn && isOptionalOut) {
				const assign = optin === "optional" ? `${id}_present` : `${id}.value !== undefined || ${id}_present`;
				doc.write(`
        const ${id}_present = ${isPresent};
        if (!${id}.issues.length || ${id}_present) {
          if (${id}.issues.length) {${prefixStr(id, k)}
          }

          if (${assign}) {
            newResult[${k}] = ${id}.value;
          }
        }

      `);
			} else if (!isOptionalIn) doc.write(`
        const ${id}_present = ${isPresent};
        if (${id}.issues.length) {${prefixStr(id, k)}
        }
        if (!${id}_present && !${id}.issues.length) {
          payload.issues.push({
            code: "invalid_type",
            expected: "nonoptional",
            input: undefined,
            path: [${k}]
          });
          if (ctx && ctx.abortEarly) {
            payload.value = newResult;
            return payload;
          }
        }

        if (${id}_present) {
          newResult[${k}] = ${id}.value;
        }

      `);
			else {
				doc.write(`
        if (${id}.issues.length) {${prefixStr(id, k)}
        }
      `);
				if (optin === "defaulted") doc.write(`newResult[${k}] = ${id}.value;`);
				else doc.write(`
        if (${id}.value !== undefined || ${isPresent}) {
          newResult[${k}] = ${id}.value;
        }
      `);
			}
		}
		doc.write(`payload.value = newResult;`);
		doc.write(`return payload;`);
		return doc.compile();
	};
	let fastpass;
	const isObject$2 = isObject;
	const jit = !globalConfig.jitless;
	const fastEnabled = jit && allowsEval.value;
	const catchall = def.catchall;
	let value;
	inst._zod.parse = (payload, ctx) => {
		value ?? (value = _normalized.value);
		const input = payload.value;
		if (!isObject$2(input)) {
			payload.issues.push({
				expected: "object",
				code: "invalid_type",
				input,
				inst
			});
			return payload;
		}
		if (jit && fastEnabled && ctx?.async === false && ctx.jitless !== true) {
			if (!fastpass) fastpass = generateFastpass(def.shape);
			payload = fastpass(payload, ctx);
			if (!catchall) return payload;
			return handleCatchall([], input, payload, ctx, value, inst, ctx?.abortEarly === true);
		}
		return superParse(payload, ctx);
	};
});
function handleUnionResults(results, final, inst, ctx) {
	for (const result of results) if (result.issues.length === 0) {
		final.value = result.value;
		return final;
	}
	const nonaborted = results.filter((r) => !aborted(r));
	if (nonaborted.length === 1) {
		final.value = nonaborted[0].value;
		return nonaborted[0];
	}
	final.issues.push({
		code: "invalid_union",
		input: final.value,
		inst,
		errors: results.map((result) => result.issues.map((iss) => finalizeIssue(iss, ctx, config())))
	});
	return final;
}
const $ZodUnion = /*@__PURE__*/ $constructor("$ZodUnion", (inst, def) => {
	$ZodType.init(inst, def);
	defineLazyInternal(inst, "optin", (zod) => zod.def.options.some((o) => o._zod.optin === "defaulted") ? "defaulted" : zod.def.options.some((o) => o._zod.optin !== void 0) ? "optional" : void 0);
	defineLazyInternal(inst, "optout", (zod) => zod.def.options.some((o) => o._zod.optout === "optional") ? "optional" : void 0);
	defineLazyInternal(inst, "values", (zod) => {
		if (zod.def.options.every((o) => o._zod.values)) return new Set(zod.def.options.flatMap((option) => Array.from(option._zod.values)));
	});
	defineLazyInternal(inst, "pattern", (zod) => {
		if (zod.def.options.every((o) => o._zod.pattern)) {
			const patterns = zod.def.options.map((o) => o._zod.pattern);
			return new RegExp(`^(${patterns.map((p) => cleanRegex(p.source)).join("|")})$`);
		}
	});
	const first = def.options.length === 1 ? def.options[0]._zod.run : null;
	inst._zod.parse = (payload, ctx) => {
		if (first) return first(payload, ctx);
		let async = false;
		const results = [];
		for (const option of def.options) {
			const result = option._zod.run({
				value: payload.value,
				issues: []
			}, ctx);
			if (result instanceof Promise) {
				results.push(result);
				async = true;
			} else {
				if (result.issues.length === 0) return result;
				results.push(result);
			}
		}
		if (!async) return handleUnionResults(results, payload, inst, ctx);
		return Promise.all(results).then((results) => {
			return handleUnionResults(results, payload, inst, ctx);
		});
	};
});
function discriminatorMap(def) {
	const map = /* @__PURE__ */ new Map();
	for (const option of def.options) {
		const values = option._zod.propValues?.[def.discriminator];
		if (!values || values.size === 0) throw new Error(`Invalid discriminated union option at index "${def.options.indexOf(option)}"`);
		for (const value of values) if (map.has(value)) {
			if (value !== void 0) throw new Error(`Duplicate discriminator value "${String(value)}"`);
			map.set(value, null);
		} else map.set(value, option);
	}
	return map;
}
const $ZodDiscriminatedUnion = /*@__PURE__*/ $constructor("$ZodDiscriminatedUnion", (inst, def) => {
	def.inclusive = false;
	$ZodUnion.init(inst, def);
	const _super = inst._zod.parse;
	defineLazyInternal(inst, "propValues", (zod) => {
		const propValues = {};
		let undefinedCount = 0;
		for (const option of zod.def.options) {
			const pv = option._zod.propValues;
			if (!pv || Object.keys(pv).length === 0) throw new Error(`Invalid discriminated union option at index "${zod.def.options.indexOf(option)}"`);
			if (pv[zod.def.discriminator]?.has(void 0)) undefinedCount++;
			for (const [k, v] of Object.entries(pv)) {
				if (!Object.prototype.hasOwnProperty.call(propValues, k)) assignProp(propValues, k, /* @__PURE__ */ new Set());
				for (const val of v) propValues[k].add(val);
			}
		}
		if (!zod.def.unionFallback && undefinedCount > 1) propValues[zod.def.discriminator]?.delete(void 0);
		return propValues;
	});
	def.options.forEach((option, i) => {
		const propShape = rawShape(option._zod.def);
		if (propShape && !Object.prototype.hasOwnProperty.call(propShape, def.discriminator)) throw new Error(`Invalid discriminated union option at index "${i}"`);
	});
	const disc = cached(() => discriminatorMap(def));
	inst._zod.parse = (payload, ctx) => {
		const input = payload.value;
		if (!isObject(input)) {
			payload.issues.push({
				code: "invalid_type",
				expected: "object",
				input,
				inst
			});
			return payload;
		}
		const value = input?.[def.discriminator];
		const opt = disc.value.get(value);
		if (opt && (value !== void 0 || ctx.direction !== "backward")) return opt._zod.run(payload, ctx);
		if (def.unionFallback || ctx.direction === "backward") return _super(payload, ctx);
		payload.issues.push({
			code: "invalid_union",
			errors: [],
			note: "No matching discriminator",
			discriminator: def.discriminator,
			options: Array.from(disc.value.keys()).filter((value) => disc.value.get(value) !== null),
			input,
			path: [def.discriminator],
			inst
		});
		return payload;
	};
});
const $ZodIntersection = /*@__PURE__*/ $constructor("$ZodIntersection", (inst, def) => {
	$ZodType.init(inst, def);
	inst._zod.parse = (payload, ctx) => {
		const input = payload.value;
		const left = def.left._zod.run({
			value: input,
			issues: []
		}, ctx);
		const right = def.right._zod.run({
			value: input,
			issues: []
		}, ctx);
		if (left instanceof Promise || right instanceof Promise) return Promise.all([left, right]).then(([left, right]) => {
			return handleIntersectionResults(payload, left, right);
		});
		return handleIntersectionResults(payload, left, right);
	};
});
function mergeValues(a, b) {
	if (a === b) return {
		valid: true,
		data: a
	};
	if (a instanceof Date && b instanceof Date && +a === +b) return {
		valid: true,
		data: a
	};
	if (isPlainObject(a) && isPlainObject(b)) {
		const bKeys = Object.keys(b);
		const sharedKeys = Object.keys(a).filter((key) => bKeys.indexOf(key) !== -1);
		const newObj = {
			...a,
			...b
		};
		if (Object.prototype.hasOwnProperty.call(newObj, "__proto__")) delete newObj.__proto__;
		for (const key of sharedKeys) {
			if (key === "__proto__") continue;
			const sharedValue = mergeValues(a[key], b[key]);
			if (!sharedValue.valid) return {
				valid: false,
				mergeErrorPath: [key, ...sharedValue.mergeErrorPath]
			};
			newObj[key] = sharedValue.data;
		}
		return {
			valid: true,
			data: newObj
		};
	}
	if (Array.isArray(a) && Array.isArray(b)) {
		if (a.length !== b.length) return {
			valid: false,
			mergeErrorPath: []
		};
		const newArray = [];
		for (let index = 0; index < a.length; index++) {
			const itemA = a[index];
			const itemB = b[index];
			const sharedValue = mergeValues(itemA, itemB);
			if (!sharedValue.valid) return {
				valid: false,
				mergeErrorPath: [index, ...sharedValue.mergeErrorPath]
			};
			newArray.push(sharedValue.data);
		}
		return {
			valid: true,
			data: newArray
		};
	}
	return {
		valid: false,
		mergeErrorPath: []
	};
}
function handleIntersectionResults(result, left, right) {
	const unrecKeys = /* @__PURE__ */ new Map();
	let unrecIssue;
	const keyIssues = /* @__PURE__ */ new Map();
	const collect = (iss, side) => {
		let keys;
		if (iss.code === "unrecognized_keys" && !iss.path?.length) {
			unrecIssue ?? (unrecIssue = iss);
			keys = iss.keys;
		} else if (iss.code === "invalid_key" && iss.origin === "record" && iss.path?.length === 1) {
			const k = String(iss.path[0]);
			if (!keyIssues.has(k)) keyIssues.set(k, iss);
			keys = [k];
		} else return false;
		for (const k of keys) {
			if (!unrecKeys.has(k)) unrecKeys.set(k, {});
			unrecKeys.get(k)[side] = true;
		}
		return true;
	};
	for (const iss of left.issues) if (!collect(iss, "l")) result.issues.push(iss);
	for (const iss of right.issues) if (!collect(iss, "r")) result.issues.push(iss);
	const bothKeys = [...unrecKeys].filter(([, f]) => f.l && f.r).map(([k]) => k);
	if (bothKeys.length) {
		const aggregated = unrecIssue ? bothKeys.filter((k) => unrecIssue.keys.includes(k)) : [];
		if (aggregated.length) result.issues.push({
			...unrecIssue,
			keys: aggregated
		});
		for (const k of bothKeys) if (!aggregated.includes(k) && keyIssues.has(k)) result.issues.push(keyIssues.get(k));
	}
	const merged = mergeValues(left.value, right.value);
	if (!merged.valid) {
		if (aborted(result)) return result;
		throw new Error(`Unmergable intersection. Error path: ${JSON.stringify(merged.mergeErrorPath)}`);
	}
	result.value = merged.data;
	return result;
}
const $ZodEnum = /*@__PURE__*/ $constructor("$ZodEnum", (inst, def) => {
	$ZodType.init(inst, def);
	const values = getEnumValues(def.entries);
	const valuesSet = new Set(values);
	inst._zod.values = valuesSet;
	defineLazyInternal(inst, "pattern", (zod) => {
		const patternValues = getEnumValues(zod.def.entries).filter((k) => propertyKeyTypes.has(typeof k));
		return new RegExp(patternValues.length ? `^(${patternValues.map((o) => escapeRegex(o.toString())).join("|")})$` : "^[^\\s\\S]$");
	});
	inst._zod.parse = (payload, _ctx) => {
		const input = payload.value;
		if (valuesSet.has(input)) return payload;
		payload.issues.push({
			code: "invalid_value",
			values,
			input,
			inst
		});
		return payload;
	};
});
const $ZodLiteral = /*@__PURE__*/ $constructor("$ZodLiteral", (inst, def) => {
	$ZodType.init(inst, def);
	const values = new Set(def.values);
	inst._zod.values = values;
	defineLazyInternal(inst, "pattern", (zod) => {
		const vals = zod.def.values;
		return new RegExp(vals.length ? `^(${vals.map((o) => typeof o === "string" ? escapeRegex(o) : o ? escapeRegex(o.toString()) : String(o)).join("|")})$` : "^[^\\s\\S]$");
	});
	inst._zod.parse = (payload, _ctx) => {
		const input = payload.value;
		if (values.has(input)) return payload;
		payload.issues.push({
			code: "invalid_value",
			values: def.values,
			input,
			inst
		});
		return payload;
	};
});
const $ZodTransform = /*@__PURE__*/ $constructor("$ZodTransform", (inst, def) => {
	$ZodType.init(inst, def);
	inst._zod.optin = "optional";
	globalConfig.memoizer?.guard(inst);
	inst._zod.parse = (payload, ctx) => {
		if (ctx.direction === "backward") throw new $ZodEncodeError(inst.constructor.name);
		const _out = def.transform(payload.value, payload);
		if (ctx.async) return (_out instanceof Promise ? _out : Promise.resolve(_out)).then((output) => {
			payload.value = output;
			return payload;
		});
		if (_out instanceof Promise) throw new $ZodAsyncError();
		payload.value = _out;
		return payload;
	};
});
function handleOptionalResult(payload, result) {
	payload.value = result.issues.length ? void 0 : result.value;
	return payload;
}
const $ZodOptional = /*@__PURE__*/ $constructor("$ZodOptional", (inst, def) => {
	$ZodType.init(inst, def);
	defineLazyInternal(inst, "optin", (zod) => zod.def.innerType._zod.optin === "defaulted" ? "defaulted" : "optional");
	inst._zod.optout = "optional";
	defineLazyInternal(inst, "values", (zod) => {
		const values = zod.def.innerType._zod.values;
		return values ? /* @__PURE__ */ new Set([...values, void 0]) : void 0;
	});
	defineLazyInternal(inst, "pattern", (zod) => {
		const pattern = zod.def.innerType._zod.pattern;
		return pattern ? new RegExp(`^(${cleanRegex(pattern.source)})?$`) : void 0;
	});
	inst._zod.parse = (payload, ctx) => {
		if (payload.value === void 0) {
			if (def.innerType._zod.optin !== "defaulted") return payload;
			const result = def.innerType._zod.run({
				value: payload.value,
				issues: []
			}, ctx);
			if (result instanceof Promise) return result.then((result) => handleOptionalResult(payload, result));
			return handleOptionalResult(payload, result);
		}
		return def.innerType._zod.run(payload, ctx);
	};
});
const $ZodExactOptional = /*@__PURE__*/ $constructor("$ZodExactOptional", (inst, def) => {
	$ZodOptional.init(inst, def);
	defineLazyInternal(inst, "values", (zod) => zod.def.innerType._zod.values);
	defineLazyInternal(inst, "pattern", (zod) => zod.def.innerType._zod.pattern);
	inst._zod.parse = (payload, ctx) => {
		return def.innerType._zod.run(payload, ctx);
	};
});
const $ZodNullable = /*@__PURE__*/ $constructor("$ZodNullable", (inst, def) => {
	$ZodType.init(inst, def);
	defineLazyInternal(inst, "optin", (zod) => zod.def.innerType._zod.optin);
	defineLazyInternal(inst, "optout", (zod) => zod.def.innerType._zod.optout);
	defineLazyInternal(inst, "pattern", (zod) => {
		const pattern = zod.def.innerType._zod.pattern;
		return pattern ? new RegExp(`^(${cleanRegex(pattern.source)}|null)$`) : void 0;
	});
	defineLazyInternal(inst, "values", (zod) => {
		return zod.def.innerType._zod.values ? /* @__PURE__ */ new Set([...zod.def.innerType._zod.values, null]) : void 0;
	});
	inst._zod.parse = (payload, ctx) => {
		if (payload.value === null) return payload;
		return def.innerType._zod.run(payload, ctx);
	};
});
const $ZodDefault = /*@__PURE__*/ $constructor("$ZodDefault", (inst, def) => {
	$ZodType.init(inst, def);
	inst._zod.optin = "defaulted";
	defineLazyInternal(inst, "values", (zod) => zod.def.innerType._zod.values);
	inst._zod.parse = (payload, ctx) => {
		if (ctx.direction === "backward") return def.innerType._zod.run(payload, ctx);
		if (payload.value === void 0) {
			payload.value = def.defaultValue;
			/**
			* $ZodDefault returns the default value immediately in forward direction.
			* It doesn't pass the default value into the validator ("prefault"). There's no reason to pass the default value through validation. The validity of the default is enforced by TypeScript statically. Otherwise, it's the responsibility of the user to ensure the default is valid. In the case of pipes with divergent in/out types, you can specify the default on the `in` schema of your ZodPipe to set a "prefault" for the pipe.   */
			return payload;
		}
		const result = def.innerType._zod.run(payload, ctx);
		if (result instanceof Promise) return result.then((result) => handleDefaultResult(result, def));
		return handleDefaultResult(result, def);
	};
});
function handleDefaultResult(payload, def) {
	if (payload.value === void 0) payload.value = def.defaultValue;
	return payload;
}
const $ZodPrefault = /*@__PURE__*/ $constructor("$ZodPrefault", (inst, def) => {
	$ZodType.init(inst, def);
	inst._zod.optin = "defaulted";
	defineLazyInternal(inst, "values", (zod) => zod.def.innerType._zod.values);
	inst._zod.parse = (payload, ctx) => {
		if (ctx.direction === "backward") return def.innerType._zod.run(payload, ctx);
		if (payload.value === void 0) payload.value = def.defaultValue;
		return def.innerType._zod.run(payload, ctx);
	};
});
const $ZodNonOptional = /*@__PURE__*/ $constructor("$ZodNonOptional", (inst, def) => {
	$ZodType.init(inst, def);
	defineLazyInternal(inst, "values", (zod) => {
		const v = zod.def.innerType._zod.values;
		return v ? new Set([...v].filter((x) => x !== void 0)) : void 0;
	});
	inst._zod.parse = (payload, ctx) => {
		const result = def.innerType._zod.run(payload, ctx);
		if (result instanceof Promise) return result.then((result) => handleNonOptionalResult(result, inst));
		return handleNonOptionalResult(result, inst);
	};
});
function handleNonOptionalResult(payload, inst) {
	if (!payload.issues.length && payload.value === void 0) payload.issues.push({
		code: "invalid_type",
		expected: "nonoptional",
		input: payload.value,
		inst
	});
	return payload;
}
function handleCatchResult(payload, result, def, ctx) {
	if (!result.issues.length) {
		payload.value = result.value;
		if (result.memo) payload.memo = true;
		return payload;
	}
	payload.value = def.catchValue({
		...result,
		value: payload.value,
		error: { issues: result.issues.map((iss) => finalizeIssue(iss, ctx, config())) },
		input: payload.value
	});
	return payload;
}
const $ZodCatch = /*@__PURE__*/ $constructor("$ZodCatch", (inst, def) => {
	$ZodType.init(inst, def);
	defineLazyInternal(inst, "optin", (zod) => zod.def.innerType._zod.optin === "defaulted" ? "defaulted" : "optional");
	defineLazyInternal(inst, "optout", (zod) => zod.def.innerType._zod.optout);
	defineLazyInternal(inst, "values", (zod) => zod.def.innerType._zod.values);
	inst._zod.parse = (payload, ctx) => {
		if (ctx.direction === "backward") return def.innerType._zod.run(payload, ctx);
		const result = def.innerType._zod.run({
			value: payload.value,
			issues: []
		}, ctx);
		if (result instanceof Promise) return result.then((result) => handleCatchResult(payload, result, def, ctx));
		return handleCatchResult(payload, result, def, ctx);
	};
});
const $ZodPipe = /*@__PURE__*/ $constructor("$ZodPipe", (inst, def) => {
	$ZodType.init(inst, def);
	defineLazyInternal(inst, "values", (zod) => zod.def.in._zod.values);
	defineLazyInternal(inst, "optin", (zod) => zod.def.in._zod.optin);
	defineLazyInternal(inst, "optout", (zod) => zod.def.out._zod.optout);
	defineLazyInternal(inst, "propValues", (zod) => zod.def.in._zod.propValues);
	inst._zod.parse = (payload, ctx) => {
		if (ctx.direction === "backward") {
			const right = def.out._zod.run(payload, ctx);
			if (right instanceof Promise) return right.then((right) => handlePipeResult(right, def.in, ctx));
			return handlePipeResult(right, def.in, ctx);
		}
		const left = def.in._zod.run(payload, ctx);
		if (left instanceof Promise) return left.then((left) => handlePipeResult(left, def.out, ctx));
		return handlePipeResult(left, def.out, ctx);
	};
});
function handlePipeResult(left, next, ctx) {
	if (left.issues.some((iss) => iss.code !== "unrecognized_keys")) {
		left.aborted = true;
		return left;
	}
	return next._zod.run({
		value: left.value,
		issues: left.issues
	}, ctx);
}
const $ZodReadonly = /*@__PURE__*/ $constructor("$ZodReadonly", (inst, def) => {
	$ZodType.init(inst, def);
	defineLazyInternal(inst, "propValues", (zod) => zod.def.innerType._zod.propValues);
	defineLazyInternal(inst, "values", (zod) => zod.def.innerType._zod.values);
	defineLazyInternal(inst, "optin", (zod) => zod.def.innerType?._zod?.optin);
	defineLazyInternal(inst, "optout", (zod) => zod.def.innerType?._zod?.optout);
	inst._zod.parse = (payload, ctx) => {
		if (ctx.direction === "backward") return def.innerType._zod.run(payload, ctx);
		const result = def.innerType._zod.run(payload, ctx);
		if (result instanceof Promise) return result.then(handleReadonlyResult);
		return handleReadonlyResult(result);
	};
});
function handleReadonlyResult(payload) {
	if (!payload.memo) payload.value = Object.freeze(payload.value);
	return payload;
}
const $ZodCustom = /*@__PURE__*/ $constructor("$ZodCustom", (inst, def) => {
	$ZodCheck.init(inst, def);
	$ZodType.init(inst, def);
	inst._zod.parse = (payload, _) => {
		return payload;
	};
	inst._zod.check = (payload) => {
		const input = payload.value;
		const r = def.fn(input);
		if (r instanceof Promise) return r.then((r) => handleRefineResult(r, payload, input, inst));
		handleRefineResult(r, payload, input, inst);
	};
});
function handleRefineResult(result, payload, input, inst) {
	if (!result) {
		const _iss = {
			code: "custom",
			input,
			inst,
			path: [...inst._zod.def.path ?? []],
			continue: !inst._zod.def.abort
		};
		if (inst._zod.def.params) _iss.params = inst._zod.def.params;
		payload.issues.push(issue(_iss));
	}
}
// node_modules/zod/v4/core/memoizer.js
var $ZodCyclicError = class extends Error {
	constructor() {
		super(`Cannot parse a reference cycle that closes through a transform`);
		this.name = "ZodCyclicError";
	}
};
/** Keyed off the context object every schema in one parse call already shares. */
const STATE = "~memo";
const NO_ISSUES = [];
function isRef(value) {
	return value !== null && typeof value === "object";
}
function cloneIssues(issues) {
	return issues.map((iss) => iss.path ? {
		...iss,
		path: iss.path.slice()
	} : { ...iss });
}
const recursive = /*@__PURE__*/ new WeakMap();
/** What the walk established, in order of certainty: ordered so the strongest answer among children wins. */
const NONE = 0;
const ASSUMED = 1;
const PROVEN = 2;
/** Whether this schema's subtree contains a cycle, so one parse can re-enter it. */
function isRecursive(inst, stack, resolve) {
	const cached = recursive.get(inst);
	if (cached !== void 0) return cached ? PROVEN : NONE;
	if (stack.has(inst)) return PROVEN;
	stack.add(inst);
	let result = NONE;
	const check = (child) => {
		if (result !== PROVEN && child?._zod) {
			const answer = isRecursive(child, stack, resolve);
			if (answer > result) result = answer;
		}
	};
	const shape = (sh, spread) => {
		let answer = NONE;
		for (const key of Reflect.ownKeys(sh)) {
			const desc = Object.getOwnPropertyDescriptor(sh, key);
			if (spread && !desc.enumerable) continue;
			const child = desc.get ? ASSUMED : desc.value?._zod ? isRecursive(desc.value, stack, resolve) : NONE;
			if (child > answer) answer = child;
		}
		return answer;
	};
	const merge = (answer) => {
		if (answer > result) result = answer;
	};
	const def = inst._zod.def;
	switch (def.type) {
		case "object": {
			const raw = rawShape(def);
			merge(raw ? shape(raw, true) : ASSUMED);
			check(def.catchall);
			break;
		}
		case "array":
			check(def.element);
			break;
		case "tuple":
			for (const el of def.items) check(el);
			check(def.rest);
			break;
		case "record":
		case "map":
			check(def.keyType);
			check(def.valueType);
			break;
		case "set":
			check(def.valueType);
			break;
		case "union":
			for (const el of def.options) check(el);
			break;
		case "intersection":
			check(def.left);
			check(def.right);
			break;
		case "optional":
		case "nullable":
		case "default":
		case "prefault":
		case "catch":
		case "readonly":
		case "nonoptional":
		case "promise":
		case "success":
			check(def.innerType);
			break;
		case "pipe":
			check(def.in);
			check(def.out);
			break;
		case "function":
			check(def.input);
			check(def.output);
			break;
		case "lazy": {
			const inner = def._cachedInner ?? (resolve ? inst._zod.innerType : void 0);
			merge(inner ? isRecursive(inner, stack, false) : ASSUMED);
			break;
		}
		case "template_literal":
		case "string":
		case "number":
		case "int":
		case "boolean":
		case "bigint":
		case "symbol":
		case "undefined":
		case "null":
		case "void":
		case "never":
		case "any":
		case "unknown":
		case "date":
		case "nan":
		case "enum":
		case "literal":
		case "file":
		case "transform":
		case "custom": break;
		default: for (const key in def) {
			const desc = Object.getOwnPropertyDescriptor(def, key);
			if (!desc || desc.get) continue;
			const value = desc.value;
			if (!value || typeof value !== "object") continue;
			if (value._zod) check(value);
			else if (Array.isArray(value)) for (const el of value) check(el);
		}
	}
	stack.delete(inst);
	return settle(inst, result);
}
/** An assumed answer must not outlive the resolution that settles it, so only a certain one is cached. */
function settle(inst, answer) {
	if (answer !== ASSUMED) recursive.set(inst, answer === PROVEN);
	return answer;
}
function bucketFor(state, inst) {
	let bucket = state.buckets.get(inst);
	if (!bucket) {
		bucket = /* @__PURE__ */ new WeakMap();
		state.buckets.set(inst, bucket);
	}
	return bucket;
}
let handoff;
const open$1 = [];
const memo = {
	alloc(_inst, payload, empty) {
		const bucket = handoff;
		if (!bucket) return empty;
		handoff = void 0;
		const entry = {
			value: empty,
			issues: null
		};
		bucket.set(payload.value, entry);
		open$1.push(entry);
		return empty;
	},
	guard(inst) {
		var _a;
		(_a = inst._zod).deferred ?? (_a.deferred = []);
		inst._zod.deferred.push(() => {
			const base = inst._zod.parse;
			const wrapped = (payload, ctx) => {
				if (ctx.direction !== "backward" && isBackEdge(ctx, payload.value)) throw new $ZodCyclicError();
				return base(payload, ctx);
			};
			inst._zod.parse = wrapped;
			if (inst._zod.run === base) inst._zod.run = wrapped;
		});
	},
	attach(inst) {
		var _a;
		let isRecursiveInst;
		let rechecked = false;
		let lastCtx;
		let lastBucket;
		(_a = inst._zod).deferred ?? (_a.deferred = []);
		inst._zod.deferred.push(() => {
			const base = inst._zod.parse;
			const wrapped = (payload, ctx) => {
				if (isRecursiveInst === void 0) {
					const walked = isRecursive(inst, /* @__PURE__ */ new Set(), false);
					if (walked === NONE) {
						inst._zod.parse = base;
						if (inst._zod.run === wrapped) inst._zod.run = base;
						return base(payload, ctx);
					}
					if (walked === PROVEN || rechecked) isRecursiveInst = true;
					else rechecked = true;
				}
				const input = payload.value;
				if (!isRef(input)) return base(payload, ctx);
				let state = ctx[STATE];
				if (!state) {
					state = {
						buckets: /* @__PURE__ */ new WeakMap(),
						backEdges: void 0
					};
					ctx[STATE] = state;
				}
				let bucket;
				if (lastCtx === ctx) bucket = lastBucket;
				else {
					bucket = bucketFor(state, inst);
					lastCtx = ctx;
					lastBucket = bucket;
				}
				const hit = bucket.get(input);
				if (hit) {
					payload.value = hit.value;
					if (hit.issues) {
						if (hit.issues.length) payload.issues.push(...cloneIssues(hit.issues));
					} else {
						payload.memo = true;
						state.backEdges ?? (state.backEdges = /* @__PURE__ */ new WeakSet());
						state.backEdges.add(hit.value);
					}
					return payload;
				}
				handoff = bucket;
				const depth = open$1.length;
				const result = base(payload, ctx);
				handoff = void 0;
				const entry = open$1.length > depth ? open$1.pop() : void 0;
				if (result instanceof Promise) return result.then((r) => {
					if (entry) entry.issues = r.issues.length ? cloneIssues(r.issues) : NO_ISSUES;
					return r;
				});
				if (entry) entry.issues = result.issues.length ? cloneIssues(result.issues) : NO_ISSUES;
				return result;
			};
			inst._zod.parse = wrapped;
			if (inst._zod.run === base) inst._zod.run = wrapped;
		});
	}
};
/** The memoizer that gives containers cycle support. `zod` installs it by default; `zod/mini` opts in with `config({ memoizer: memoizer() })`. */
function memoizer() {
	return memo;
}
/** Whether this value is a node a back-edge resolved to before it finished. */
function isBackEdge(ctx, value) {
	const backEdges = ctx[STATE]?.backEdges;
	return backEdges !== void 0 && isRef(value) && backEdges.has(value);
}
// node_modules/zod/v4/locales/en.js
const error = () => {
	const Sizable = {
		string: {
			unit: "characters",
			verb: "to have"
		},
		file: {
			unit: "bytes",
			verb: "to have"
		},
		array: {
			unit: "items",
			verb: "to have"
		},
		set: {
			unit: "items",
			verb: "to have"
		},
		map: {
			unit: "entries",
			verb: "to have"
		}
	};
	function getSizing(origin) {
		return Sizable[origin] ?? null;
	}
	const FormatDictionary = {
		regex: "input",
		email: "email address",
		url: "URL",
		emoji: "emoji",
		uuid: "UUID",
		uuidv4: "UUIDv4",
		uuidv6: "UUIDv6",
		nanoid: "nanoid",
		guid: "GUID",
		cuid: "cuid",
		cuid2: "cuid2",
		ulid: "ULID",
		xid: "XID",
		ksuid: "KSUID",
		datetime: "ISO datetime",
		date: "ISO date",
		time: "ISO time",
		duration: "ISO duration",
		ipv4: "IPv4 address",
		ipv6: "IPv6 address",
		mac: "MAC address",
		cidrv4: "IPv4 range",
		cidrv6: "IPv6 range",
		base64: "base64-encoded string",
		base64url: "base64url-encoded string",
		json_string: "JSON string",
		e164: "E.164 number",
		currency_code: "currency code",
		credit_card: "credit card number",
		iban: "IBAN",
		jwt: "JWT",
		template_literal: "input"
	};
	const TypeDictionary = { nan: "NaN" };
	function getTypeName(type, input) {
		if (type === "number" && typeof input === "number" && !Number.isFinite(input)) return String(input);
		return TypeDictionary[type] ?? type;
	}
	return (issue) => {
		switch (issue.code) {
			case "invalid_type": return `Invalid input: expected ${getTypeName(issue.expected)}, received ${getTypeName(parsedType(issue.input), issue.input)}`;
			case "invalid_value":
				if (issue.values.length === 1) return `Invalid input: expected ${stringifyPrimitive(issue.values[0])}`;
				return `Invalid option: expected one of ${joinValues(issue.values, "|")}`;
			case "too_big": {
				const adj = issue.exact ? "exactly " : issue.inclusive ? "<=" : "<";
				const sizing = getSizing(issue.origin);
				if (sizing) return `Too big: expected ${issue.origin ?? "value"} to have ${adj}${issue.maximum.toString()} ${sizing.unit ?? "elements"}`;
				return `Too big: expected ${issue.origin ?? "value"} to be ${adj}${issue.maximum.toString()}`;
			}
			case "too_small": {
				const adj = issue.exact ? "exactly " : issue.inclusive ? ">=" : ">";
				const sizing = getSizing(issue.origin);
				if (sizing) return `Too small: expected ${issue.origin} to have ${adj}${issue.minimum.toString()} ${sizing.unit}`;
				return `Too small: expected ${issue.origin} to be ${adj}${issue.minimum.toString()}`;
			}
			case "invalid_format": {
				const _issue = issue;
				if (_issue.format === "starts_with") return `Invalid string: must start with "${_issue.prefix}"`;
				if (_issue.format === "ends_with") return `Invalid string: must end with "${_issue.suffix}"`;
				if (_issue.format === "includes") return `Invalid string: must include "${_issue.includes}"`;
				if (_issue.format === "regex") return `Invalid string: must match pattern ${_issue.pattern}`;
				return `Invalid ${FormatDictionary[_issue.format] ?? issue.format}`;
			}
			case "not_multiple_of": return `Invalid number: must be a multiple of ${issue.divisor}`;
			case "unrecognized_keys": return `Unrecognized key${issue.keys.length > 1 ? "s" : ""}: ${joinValues(issue.keys, ", ")}`;
			case "invalid_key": return `Invalid key in ${issue.origin}`;
			case "invalid_union":
				if (issue.options && Array.isArray(issue.options) && issue.options.length > 0) return `Invalid discriminator value. Expected ${issue.options.map((o) => `'${o}'`).join(" | ")}`;
				if (issue.inclusive === false) return "Invalid input: more than one option matched";
				return "Invalid input";
			case "invalid_element": return `Invalid value in ${issue.origin}`;
			default: return `Invalid input`;
		}
	};
};
function en_default() {
	return { localeError: error() };
}
// node_modules/zod/v4/core/registries.js
var _a;
var $ZodRegistry = class {
	constructor() {
		this._map = /* @__PURE__ */ new WeakMap();
		this._idmap = /* @__PURE__ */ new Map();
	}
	add(schema, ..._meta) {
		const meta = _meta[0];
		this._map.set(schema, meta);
		if (meta && typeof meta === "object" && "id" in meta) this._idmap.set(meta.id, schema);
		return this;
	}
	clear() {
		this._map = /* @__PURE__ */ new WeakMap();
		this._idmap = /* @__PURE__ */ new Map();
		return this;
	}
	remove(schema) {
		const meta = this._map.get(schema);
		if (meta && typeof meta === "object" && "id" in meta) this._idmap.delete(meta.id);
		this._map.delete(schema);
		return this;
	}
	get(schema) {
		const p = schema._zod.parent;
		if (p) {
			const pm = { ...this.get(p) ?? {} };
			delete pm.id;
			const f = {
				...pm,
				...this._map.get(schema)
			};
			return Object.keys(f).length ? f : void 0;
		}
		return this._map.get(schema);
	}
	has(schema) {
		return this._map.has(schema);
	}
};
function registry() {
	return new $ZodRegistry();
}
(_a = globalThis).__zod_globalRegistry ?? (_a.__zod_globalRegistry = registry());
const globalRegistry = globalThis.__zod_globalRegistry;
// node_modules/zod/v4/core/api.js
function snapshotChecks(def) {
	if (def.checks) def.checks = [...def.checks];
	return def;
}
// @__NO_SIDE_EFFECTS__
function _string(Class, params) {
	return new Class(snapshotChecks({
		type: "string",
		...normalizeParams(params)
	}));
}
// @__NO_SIDE_EFFECTS__
function _email(Class, params) {
	return new Class({
		type: "string",
		format: "email",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _guid(Class, params) {
	return new Class({
		type: "string",
		format: "guid",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _uuid(Class, params) {
	return new Class({
		type: "string",
		format: "uuid",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _uuidv4(Class, params) {
	return new Class({
		type: "string",
		format: "uuid",
		check: "string_format",
		abort: false,
		version: "v4",
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _uuidv6(Class, params) {
	return new Class({
		type: "string",
		format: "uuid",
		check: "string_format",
		abort: false,
		version: "v6",
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _uuidv7(Class, params) {
	return new Class({
		type: "string",
		format: "uuid",
		check: "string_format",
		abort: false,
		version: "v7",
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _url(Class, params) {
	return new Class({
		type: "string",
		format: "url",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _emoji(Class, params) {
	return new Class({
		type: "string",
		format: "emoji",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _nanoid(Class, params) {
	return new Class({
		type: "string",
		format: "nanoid",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
/**
* @deprecated CUID v1 is deprecated by its authors due to information leakage
* (timestamps embedded in the id). Use {@link _cuid2} instead.
* See https://github.com/paralleldrive/cuid.
*/
// @__NO_SIDE_EFFECTS__
function _cuid(Class, params) {
	return new Class({
		type: "string",
		format: "cuid",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _cuid2(Class, params) {
	return new Class({
		type: "string",
		format: "cuid2",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _ulid(Class, params) {
	return new Class({
		type: "string",
		format: "ulid",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _xid(Class, params) {
	return new Class({
		type: "string",
		format: "xid",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _ksuid(Class, params) {
	return new Class({
		type: "string",
		format: "ksuid",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _ipv4(Class, params) {
	return new Class({
		type: "string",
		format: "ipv4",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _ipv6(Class, params) {
	return new Class({
		type: "string",
		format: "ipv6",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _cidrv4(Class, params) {
	return new Class({
		type: "string",
		format: "cidrv4",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _cidrv6(Class, params) {
	return new Class({
		type: "string",
		format: "cidrv6",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _base64(Class, params) {
	return new Class({
		type: "string",
		format: "base64",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _base64url(Class, params) {
	return new Class({
		type: "string",
		format: "base64url",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _e164(Class, params) {
	return new Class({
		type: "string",
		format: "e164",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _jwt(Class, params) {
	return new Class({
		type: "string",
		format: "jwt",
		check: "string_format",
		abort: false,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _isoDateTime(Class, params) {
	return new Class({
		type: "string",
		format: "datetime",
		check: "string_format",
		offset: false,
		local: false,
		precision: null,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _isoDate(Class, params) {
	return new Class({
		type: "string",
		format: "date",
		check: "string_format",
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _isoTime(Class, params) {
	return new Class({
		type: "string",
		format: "time",
		check: "string_format",
		precision: null,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _isoDuration(Class, params) {
	return new Class({
		type: "string",
		format: "duration",
		check: "string_format",
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _number(Class, params) {
	return new Class(snapshotChecks({
		type: "number",
		checks: [],
		...normalizeParams(params)
	}));
}
// @__NO_SIDE_EFFECTS__
function _int(Class, params) {
	return new Class({
		type: "number",
		check: "number_format",
		abort: false,
		format: "safeint",
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _boolean(Class, params) {
	return new Class({
		type: "boolean",
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _unknown(Class) {
	return new Class({ type: "unknown" });
}
// @__NO_SIDE_EFFECTS__
function _never(Class, params) {
	return new Class({
		type: "never",
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _lt(value, params) {
	return new $ZodCheckLessThan({
		check: "less_than",
		...normalizeParams(params),
		value,
		inclusive: false
	});
}
// @__NO_SIDE_EFFECTS__
function _lte(value, params) {
	return new $ZodCheckLessThan({
		check: "less_than",
		...normalizeParams(params),
		value,
		inclusive: true
	});
}
// @__NO_SIDE_EFFECTS__
function _gt(value, params) {
	return new $ZodCheckGreaterThan({
		check: "greater_than",
		...normalizeParams(params),
		value,
		inclusive: false
	});
}
// @__NO_SIDE_EFFECTS__
function _gte(value, params) {
	return new $ZodCheckGreaterThan({
		check: "greater_than",
		...normalizeParams(params),
		value,
		inclusive: true
	});
}
// @__NO_SIDE_EFFECTS__
function _multipleOf(value, params) {
	return new $ZodCheckMultipleOf({
		check: "multiple_of",
		...normalizeParams(params),
		value
	});
}
// @__NO_SIDE_EFFECTS__
function _maxLength(maximum, params) {
	return new $ZodCheckMaxLength({
		check: "max_length",
		...normalizeParams(params),
		maximum
	});
}
// @__NO_SIDE_EFFECTS__
function _minLength(minimum, params) {
	return new $ZodCheckMinLength({
		check: "min_length",
		...normalizeParams(params),
		minimum
	});
}
// @__NO_SIDE_EFFECTS__
function _length(length, params) {
	return new $ZodCheckLengthEquals({
		check: "length_equals",
		...normalizeParams(params),
		length
	});
}
// @__NO_SIDE_EFFECTS__
function _regex(pattern, params) {
	return new $ZodCheckRegex({
		check: "string_format",
		format: "regex",
		...normalizeParams(params),
		pattern
	});
}
// @__NO_SIDE_EFFECTS__
function _lowercase(params) {
	return new $ZodCheckLowerCase({
		check: "string_format",
		format: "lowercase",
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _uppercase(params) {
	return new $ZodCheckUpperCase({
		check: "string_format",
		format: "uppercase",
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _includes(includes, params) {
	return new $ZodCheckIncludes({
		check: "string_format",
		format: "includes",
		...normalizeParams(params),
		includes
	});
}
// @__NO_SIDE_EFFECTS__
function _startsWith(prefix, params) {
	return new $ZodCheckStartsWith({
		check: "string_format",
		format: "starts_with",
		...normalizeParams(params),
		prefix
	});
}
// @__NO_SIDE_EFFECTS__
function _endsWith(suffix, params) {
	return new $ZodCheckEndsWith({
		check: "string_format",
		format: "ends_with",
		...normalizeParams(params),
		suffix
	});
}
// @__NO_SIDE_EFFECTS__
function _overwrite(tx) {
	return new $ZodCheckOverwrite({
		check: "overwrite",
		tx
	});
}
// @__NO_SIDE_EFFECTS__
function _normalize(form) {
	return /* @__PURE__ */ _overwrite((input) => input.normalize(form));
}
// @__NO_SIDE_EFFECTS__
function _trim() {
	return /* @__PURE__ */ _overwrite((input) => input.trim());
}
// @__NO_SIDE_EFFECTS__
function _toLowerCase() {
	return /* @__PURE__ */ _overwrite((input) => input.toLowerCase());
}
// @__NO_SIDE_EFFECTS__
function _toUpperCase() {
	return /* @__PURE__ */ _overwrite((input) => input.toUpperCase());
}
// @__NO_SIDE_EFFECTS__
function _slugify() {
	return /* @__PURE__ */ _overwrite((input) => slugify(input));
}
// @__NO_SIDE_EFFECTS__
function _array(Class, element, params) {
	return new Class({
		type: "array",
		element,
		...normalizeParams(params)
	});
}
// @__NO_SIDE_EFFECTS__
function _refine(Class, fn, _params) {
	return new Class({
		type: "custom",
		check: "custom",
		fn,
		...normalizeParams(_params)
	});
}
// @__NO_SIDE_EFFECTS__
function _superRefine(fn, params) {
	const ch = /* @__PURE__ */ _check((payload) => {
		payload.addIssue = (issue$2) => {
			if (typeof issue$2 === "string") payload.issues.push(issue(issue$2, payload.value, ch._zod.def));
			else {
				const _issue = issue$2;
				if (_issue.fatal) _issue.continue = false;
				_issue.code ?? (_issue.code = "custom");
				if (!("input" in _issue)) _issue.input = payload.value;
				_issue.inst ?? (_issue.inst = ch);
				_issue.continue ?? (_issue.continue = !ch._zod.def.abort);
				payload.issues.push(issue(_issue));
			}
		};
		return fn(payload.value, payload);
	}, params);
	return ch;
}
// @__NO_SIDE_EFFECTS__
function _check(fn, params) {
	const ch = new $ZodCheck({
		check: "custom",
		...normalizeParams(params)
	});
	ch._zod.check = fn;
	return ch;
}
// node_modules/zod/v4/core/to-json-schema.js
function assignProps(target, ...sources) {
	for (const source of sources) for (const key of Reflect.ownKeys(source)) if (Object.prototype.propertyIsEnumerable.call(source, key)) assignProp(target, key, source[key]);
	return target;
}
function initializeContext(params) {
	let target = params?.target ?? "draft-2020-12";
	if (target === "draft-4") target = "draft-04";
	if (target === "draft-7") target = "draft-07";
	return {
		processors: params.processors ?? {},
		metadataRegistry: params?.metadata ?? globalRegistry,
		target,
		unrepresentable: params?.unrepresentable ?? "throw",
		override: params?.override ?? (() => {}),
		io: params?.io ?? "output",
		counter: 0,
		seen: /* @__PURE__ */ new Map(),
		sharedDefsExtractedFor: void 0,
		sharedEmitDoneFor: void 0,
		cycles: params?.cycles ?? "ref",
		reused: params?.reused ?? "inline",
		intersections: [],
		deferred: [],
		external: params?.external ?? void 0
	};
}
/**
* Applies the `unrepresentable` setting at a site that has no JSON Schema equivalent. Throws
* `message` unless the setting (or the handler's return value) says otherwise. Returns `true` if a
* custom JSON Schema was written into `json`, in which case the caller must not write its own.
*/
function handleUnrepresentable(schema, ctx, json, params, message) {
	const result = typeof ctx.unrepresentable === "function" ? ctx.unrepresentable({
		zodSchema: schema,
		path: params.path,
		message
	}) : ctx.unrepresentable;
	if (result === "any") return false;
	if (result === void 0 || result === "throw") throw new Error(message);
	Object.assign(json, result);
	return true;
}
function processSchema(schema, ctx, _params = {
	path: [],
	schemaPath: []
}) {
	var _a;
	const def = schema._zod.def;
	const seen = ctx.seen.get(schema);
	if (seen) {
		seen.count++;
		if (_params.schemaPath.includes(schema)) seen.cycle = _params.path;
		return seen.schema;
	}
	const result = {
		schema: {},
		count: 1,
		cycle: void 0,
		path: _params.path
	};
	ctx.seen.set(schema, result);
	ctx.sharedDefsExtractedFor = void 0;
	ctx.sharedEmitDoneFor = void 0;
	const overrideSchema = schema._zod.toJSONSchema?.();
	if (overrideSchema) result.schema = overrideSchema;
	else {
		const params = {
			..._params,
			schemaPath: [..._params.schemaPath, schema],
			path: _params.path
		};
		if (schema._zod.processJSONSchema) schema._zod.processJSONSchema(ctx, result.schema, params);
		else {
			const _json = result.schema;
			const processor = ctx.processors[def.type];
			if (!processor) throw new Error(`[toJSONSchema]: Non-representable type encountered: ${def.type}`);
			processor(schema, ctx, _json, params);
		}
		const parent = schema._zod.parent;
		if (parent) {
			if (!result.ref) result.ref = parent;
			processSchema(parent, ctx, params);
			ctx.seen.get(parent).isParent = true;
		}
	}
	const meta = ctx.metadataRegistry.get(schema);
	if (meta) assignProps(result.schema, meta);
	if (ctx.io === "input" && isTransforming(schema)) {
		delete result.schema.examples;
		delete result.schema.default;
	}
	if (ctx.io === "input" && "_prefault" in result.schema) (_a = result.schema).default ?? (_a.default = result.schema._prefault);
	delete result.schema._prefault;
	return ctx.seen.get(schema).schema;
}
function encodeJSONPointerSegment(segment) {
	return segment.replace(/~/g, "~0").replace(/\//g, "~1");
}
function extractDefs(ctx, schema) {
	const root = ctx.seen.get(schema);
	if (!root) throw new Error("Unprocessed schema. This is a bug in Zod.");
	if (ctx.external && ctx.sharedDefsExtractedFor === ctx.external) return;
	const idToSchema = /* @__PURE__ */ new Map();
	for (const entry of ctx.seen.entries()) {
		const id = ctx.metadataRegistry.get(entry[0])?.id;
		if (id) {
			const existing = idToSchema.get(id);
			if (existing && existing !== entry[0]) throw new Error(`Duplicate schema id "${id}" detected during JSON Schema conversion. Two different schemas cannot share the same id when converted together.`);
			idToSchema.set(id, entry[0]);
		}
	}
	const makeURI = (entry) => {
		const defsSegment = ctx.target === "draft-2020-12" ? "$defs" : "definitions";
		if (ctx.external) {
			const externalId = ctx.external.registry.get(entry[0])?.id;
			const uriGenerator = ctx.external.uri ?? ((id) => id);
			if (externalId) return { ref: uriGenerator(externalId) };
			const id = entry[1].defId ?? entry[1].schema.id ?? `schema${ctx.counter++}`;
			entry[1].defId = id;
			return {
				defId: id,
				ref: `${uriGenerator("__shared")}#/${defsSegment}/${encodeJSONPointerSegment(id)}`
			};
		}
		const uriPrefix = `#`;
		const defUriPrefix = `${uriPrefix}/${defsSegment}/`;
		if (entry[1] === root && !entry[1].schema.id) return { ref: uriPrefix };
		const defId = entry[1].schema.id ?? `__schema${ctx.counter++}`;
		return {
			defId,
			ref: defUriPrefix + encodeJSONPointerSegment(defId)
		};
	};
	const extractToDef = (entry) => {
		if (entry[1].schema.$ref) return;
		const seen = entry[1];
		const { ref, defId } = makeURI(entry);
		seen.def = { ...seen.schema };
		if (defId) seen.defId = defId;
		const schema = seen.schema;
		for (const key in schema) delete schema[key];
		schema.$ref = ref;
	};
	if (ctx.cycles === "throw") for (const entry of ctx.seen.entries()) {
		const seen = entry[1];
		if (seen.cycle) throw new Error(`Cycle detected: #/${seen.cycle?.join("/")}/<root>

Set the \`cycles\` parameter to \`"ref"\` to resolve cyclical schemas with defs.`);
	}
	for (const entry of ctx.seen.entries()) {
		const seen = entry[1];
		if (schema === entry[0]) {
			extractToDef(entry);
			continue;
		}
		if (ctx.external) {
			const ext = ctx.external.registry.get(entry[0])?.id;
			if (schema !== entry[0] && ext) {
				extractToDef(entry);
				continue;
			}
		}
		if (ctx.metadataRegistry.get(entry[0])?.id) {
			extractToDef(entry);
			continue;
		}
		if (seen.cycle) {
			extractToDef(entry);
			continue;
		}
		if (seen.count > 1) {
			if (ctx.reused === "ref") extractToDef(entry);
		}
	}
	if (ctx.external) ctx.sharedDefsExtractedFor = ctx.external;
}
/** Rewrites `anyOf: [{type: "a"}, {type: "b"}]` to `type: ["a", "b"]`, which every JSON Schema draft treats as equivalent and most consumers render far better for the nullable case. Only branches that are a bare type assertion qualify — anything carrying a constraint, `$ref`, `const` or metadata is left alone. Runs after `flattenRef`, so a branch an override decorated or `$defs` extraction turned into a `$ref` is no longer bare and correctly stays in `anyOf`. `oneOf` is excluded: `integer` and `number` overlap, so "exactly one" and "at least one" are not the same there. OpenAPI 3.0 is excluded: its `type` must be a single string. */
function compactTypeUnion(schema) {
	const options = schema.anyOf;
	if (!Array.isArray(options) || options.length === 0 || schema.type !== void 0) return;
	const types = [];
	for (const option of options) {
		if (!option || typeof option !== "object") return;
		compactTypeUnion(option);
		const keys = Object.keys(option);
		if (keys.length !== 1 || keys[0] !== "type") return;
		const type = option.type;
		for (const member of Array.isArray(type) ? type : [type]) {
			if (typeof member !== "string") return;
			if (!types.includes(member)) types.push(member);
		}
	}
	delete schema.anyOf;
	schema.type = types.length === 1 ? types[0] : types;
}
/** Keywords `foldIntersection` knows how to combine. Anything else — `$ref`, `patternProperties`,
* an annotation like `description` — makes a member unfoldable, so a constraint this does not
* understand leaves the `allOf` alone instead of being silently dropped or misattributed. */
const FOLDABLE_KEYS = /* @__PURE__ */ new Set([
	"type",
	"properties",
	"required",
	"additionalProperties"
]);
const UNION_KEYS = ["oneOf", "anyOf"];
/** A member's constraint on a key it does not declare itself. A `catchall` states one; `false`, an absent `additionalProperties`, and the empty schema a loose object emits state nothing. */
function undeclaredConstraint(member) {
	const extra = member.additionalProperties;
	if (extra === void 0 || extra === false || typeof extra !== "object" || extra === null) return null;
	return Object.keys(extra).length ? extra : null;
}
/** Combines object members into the single object they describe together, or returns `null` if any of them carries a keyword outside {@link FOLDABLE_KEYS}. */
function foldObjects(members) {
	const objects = [];
	for (const member of members) {
		if (typeof member !== "object" || member.type !== "object") return null;
		for (const key in member) if (!FOLDABLE_KEYS.has(key)) return null;
		objects.push(member);
	}
	const properties = {};
	const required = /* @__PURE__ */ new Set();
	for (const object of objects) {
		for (const key in object.properties) {
			if (Object.prototype.hasOwnProperty.call(properties, key)) continue;
			const parts = [];
			for (const other of objects) {
				const part = other.properties?.[key] ?? undeclaredConstraint(other);
				if (part === null || part === void 0) continue;
				if (!parts.some((seen) => JSON.stringify(seen) === JSON.stringify(part))) parts.push(part);
			}
			assignProp(properties, key, parts.length === 1 ? parts[0] : foldObjects(parts) ?? { allOf: parts });
		}
		for (const key of object.required ?? []) required.add(key);
	}
	const folded = {
		type: "object",
		properties
	};
	if (required.size) folded.required = [...required];
	if (objects.every((object) => object.additionalProperties === false)) folded.additionalProperties = false;
	else {
		const constraints = [];
		for (const object of objects) {
			const constraint = undeclaredConstraint(object);
			if (constraint && !constraints.some((seen) => JSON.stringify(seen) === JSON.stringify(constraint))) constraints.push(constraint);
		}
		if (constraints.length === 1) folded.additionalProperties = constraints[0];
		else if (constraints.length > 1) folded.additionalProperties = { allOf: constraints };
	}
	return folded;
}
/** `additionalProperties` in an `allOf` member sees only that member's own `properties`, so two
* closed object members reject each other's keys and the schema validates nothing. Zod's parser
* pools the key sets instead — `handleIntersectionResults` reports a key as unrecognized only when
* *every* side rejects it — so the emitted schema has to pool them too, and folding the members
* into one object is the encoding that says so on every target.
*
* This runs from `finalize`, after `extractDefs`, which is what keeps it clear of the `$ref`
* machinery: a member extracted into `$defs` is already a `$ref` by now and declines to fold, so it
* keeps its reference and its own closedness rather than being inlined as a stale copy. */
function foldIntersection(json) {
	const allOf = json.allOf;
	if (!Array.isArray(allOf) || allOf.length < 2) return;
	for (const key of FOLDABLE_KEYS) if (key in json) return;
	const unions = allOf.filter((m) => UNION_KEYS.some((k) => Array.isArray(m[k])));
	let folded = null;
	if (!unions.length) folded = foldObjects(allOf);
	else {
		const union = unions[0];
		const keyword = UNION_KEYS.find((k) => Array.isArray(union[k]));
		if (Object.keys(union).length !== 1) return;
		const rest = allOf.filter((m) => m !== union);
		const branches = union[keyword].map((branch) => foldObjects([...rest, branch]));
		if (branches.some((b) => !b)) return;
		folded = { [keyword]: branches };
	}
	if (!folded) return;
	delete json.allOf;
	assignProps(json, folded);
}
function finalize(ctx, schema) {
	const root = ctx.seen.get(schema);
	if (!root) throw new Error("Unprocessed schema. This is a bug in Zod.");
	const flattenRef = (zodSchema) => {
		const seen = ctx.seen.get(zodSchema);
		if (seen.ref === null) return;
		const schema = seen.def ?? seen.schema;
		const _cached = { ...schema };
		const ref = seen.ref;
		seen.ref = null;
		if (ref) {
			flattenRef(ref);
			const refSeen = ctx.seen.get(ref);
			const refSchema = refSeen.schema;
			if (refSchema.$ref && (ctx.target === "draft-07" || ctx.target === "draft-04" || ctx.target === "openapi-3.0")) {
				schema.allOf = schema.allOf ?? [];
				schema.allOf.push(refSchema);
			} else assignProps(schema, refSchema);
			assignProps(schema, _cached);
			if (zodSchema._zod.parent === ref) for (const key in schema) {
				if (key === "$ref" || key === "allOf") continue;
				if (!(key in _cached)) delete schema[key];
			}
			if (refSchema.$ref && refSeen.def) for (const key in schema) {
				if (key === "$ref" || key === "allOf") continue;
				if (key in refSeen.def && JSON.stringify(schema[key]) === JSON.stringify(refSeen.def[key])) delete schema[key];
			}
		}
		const parent = zodSchema._zod.parent;
		if (parent && parent !== ref) {
			flattenRef(parent);
			const parentSeen = ctx.seen.get(parent);
			if (parentSeen?.schema.$ref) {
				schema.$ref = parentSeen.schema.$ref;
				if (parentSeen.def) for (const key in schema) {
					if (key === "$ref" || key === "allOf") continue;
					if (key in parentSeen.def && JSON.stringify(schema[key]) === JSON.stringify(parentSeen.def[key])) delete schema[key];
				}
			}
		}
		ctx.override({
			zodSchema,
			jsonSchema: schema,
			path: seen.path ?? []
		});
	};
	if (!ctx.external || ctx.sharedEmitDoneFor !== ctx.external) {
		for (const entry of [...ctx.seen.entries()].reverse()) flattenRef(entry[0]);
		if (ctx.target !== "openapi-3.0") for (const entry of ctx.seen.entries()) compactTypeUnion(entry[1].def ?? entry[1].schema);
		for (const rewrite of ctx.deferred) rewrite();
		if (ctx.intersections.length) {
			const carriers = /* @__PURE__ */ new Map();
			for (const seen of ctx.seen.values()) for (const json of [seen.schema, seen.def]) {
				const allOf = json?.allOf;
				if (!Array.isArray(allOf)) continue;
				const existing = carriers.get(allOf);
				if (existing) existing.push(json);
				else carriers.set(allOf, [json]);
			}
			for (const allOf of ctx.intersections) for (const json of carriers.get(allOf) ?? []) foldIntersection(json);
		}
	}
	const result = {};
	if (ctx.target === "draft-2020-12") result.$schema = "https://json-schema.org/draft/2020-12/schema";
	else if (ctx.target === "draft-07") result.$schema = "http://json-schema.org/draft-07/schema#";
	else if (ctx.target === "draft-04") result.$schema = "http://json-schema.org/draft-04/schema#";
	else if (ctx.target === "openapi-3.0") {}
	if (ctx.external?.uri) {
		const id = ctx.external.registry.get(schema)?.id;
		if (!id) throw new Error("Schema is missing an `id` property");
		result.$id = ctx.external.uri(id);
	}
	assignProps(result, root.defId ? root.schema : root.def ?? root.schema);
	const rootMetaId = ctx.metadataRegistry.get(schema)?.id;
	if (rootMetaId !== void 0 && result.id === rootMetaId) delete result.id;
	const defs = ctx.external?.defs ?? {};
	if (!ctx.external || ctx.sharedEmitDoneFor !== ctx.external) for (const entry of ctx.seen.entries()) {
		const seen = entry[1];
		if (seen.def && seen.defId) {
			if (seen.def.id === seen.defId) delete seen.def.id;
			assignProp(defs, seen.defId, seen.def);
		}
	}
	if (ctx.external) ctx.sharedEmitDoneFor = ctx.external;
	if (ctx.external) {} else if (Object.keys(defs).length > 0) {
		if (ctx.target === "draft-2020-12") result.$defs = defs;
		else result.definitions = defs;
	}
	try {
		const finalized = JSON.parse(JSON.stringify(result));
		Object.defineProperty(finalized, "~standard", {
			value: {
				...schema["~standard"],
				jsonSchema: {
					input: createStandardJSONSchemaMethod(schema, "input", ctx.processors),
					output: createStandardJSONSchemaMethod(schema, "output", ctx.processors)
				}
			},
			enumerable: false,
			writable: false
		});
		return finalized;
	} catch (_err) {
		throw new Error("Error converting schema to JSON.");
	}
}
function isTransforming(_schema, _ctx) {
	const ctx = _ctx ?? { seen: /* @__PURE__ */ new Set() };
	if (ctx.seen.has(_schema)) return false;
	ctx.seen.add(_schema);
	const def = _schema._zod.def;
	if (def.type === "transform") return true;
	if (def.type === "array") return isTransforming(def.element, ctx);
	if (def.type === "set") return isTransforming(def.valueType, ctx);
	if (def.type === "lazy") return isTransforming(def.getter(), ctx);
	if (def.type === "promise" || def.type === "optional" || def.type === "nonoptional" || def.type === "nullable" || def.type === "readonly" || def.type === "default" || def.type === "prefault" || def.type === "catch") return isTransforming(def.innerType, ctx);
	if (def.type === "intersection") return isTransforming(def.left, ctx) || isTransforming(def.right, ctx);
	if (def.type === "record" || def.type === "map") return isTransforming(def.keyType, ctx) || isTransforming(def.valueType, ctx);
	if (def.type === "pipe") {
		if (_schema._zod.traits.has("$ZodCodec")) return true;
		return isTransforming(def.in, ctx) || isTransforming(def.out, ctx);
	}
	if (def.type === "object") {
		for (const key in def.shape) if (isTransforming(def.shape[key], ctx)) return true;
		return false;
	}
	if (def.type === "union") {
		for (const option of def.options) if (isTransforming(option, ctx)) return true;
		return false;
	}
	if (def.type === "tuple") {
		for (const item of def.items) if (isTransforming(item, ctx)) return true;
		if (def.rest && isTransforming(def.rest, ctx)) return true;
		return false;
	}
	return false;
}
/**
* Creates a toJSONSchema method for a schema instance.
* This encapsulates the logic of initializing context, processing, extracting defs, and finalizing.
*/
const createToJSONSchemaMethod = (schema, processors = {}) => (params) => {
	const ctx = initializeContext({
		...params,
		processors
	});
	processSchema(schema, ctx);
	extractDefs(ctx, schema);
	return finalize(ctx, schema);
};
const createStandardJSONSchemaMethod = (schema, io, processors = {}) => (params) => {
	const { libraryOptions, target } = params ?? {};
	const ctx = initializeContext({
		...libraryOptions ?? {},
		target,
		io,
		processors
	});
	processSchema(schema, ctx);
	extractDefs(ctx, schema);
	return finalize(ctx, schema);
};
// node_modules/zod/v4/core/json-schema-processors.js
const narrowMin = (agg, key, value) => {
	if (agg[key] === void 0 || value > agg[key]) agg[key] = value;
};
const narrowMax = (agg, key, value) => {
	if (agg[key] === void 0 || value < agg[key]) agg[key] = value;
};
const narrowBoth = (agg, value) => {
	narrowMin(agg, "minimum", value);
	narrowMax(agg, "maximum", value);
};
const addDivisor = (agg, value) => {
	agg.multipleOf ?? (agg.multipleOf = []);
	if (!agg.multipleOf.includes(value)) agg.multipleOf.push(value);
};
const addPattern = (agg, pattern) => {
	agg.patterns ?? (agg.patterns = /* @__PURE__ */ new Set());
	agg.patterns.add(pattern);
};
const intersectMime = (agg, mime) => {
	agg.mime = agg.mime ? agg.mime.filter((m) => mime.includes(m)) : [...mime];
};
const setFormat = (agg, format) => {
	agg.format = format;
	if (format.includes("int")) agg.isInt = true;
};
const minContributor = (agg, def) => narrowMin(agg, "minimum", def.minimum);
const maxContributor = (agg, def) => narrowMax(agg, "maximum", def.maximum);
const formatContributor = (ranges) => (agg, def) => {
	setFormat(agg, def.format);
	const [minimum, maximum] = ranges[def.format];
	narrowMin(agg, "minimum", minimum);
	narrowMax(agg, "maximum", maximum);
};
const contributors = {
	greater_than: (agg, def) => narrowMin(agg, def.inclusive ? "minimum" : "exclusiveMinimum", def.value),
	less_than: (agg, def) => narrowMax(agg, def.inclusive ? "maximum" : "exclusiveMaximum", def.value),
	multiple_of: (agg, def) => addDivisor(agg, def.value),
	number_format: formatContributor(NUMBER_FORMAT_RANGES),
	bigint_format: formatContributor(BIGINT_FORMAT_RANGES),
	min_length: minContributor,
	max_length: maxContributor,
	length_equals: (agg, def) => narrowBoth(agg, def.length),
	min_size: minContributor,
	max_size: maxContributor,
	size_equals: (agg, def) => narrowBoth(agg, def.size),
	string_format: (agg, def) => {
		setFormat(agg, def.format);
		if (def.pattern) addPattern(agg, def.pattern);
		if (def.format === "base64" || def.format === "base64url") agg.contentEncoding = def.format;
		if (def.local || def.precision === -1) agg.laxFormat = true;
	},
	mime_type: (agg, def) => intersectMime(agg, def.mime)
};
function aggregateChecks(schema) {
	const agg = {};
	const def = schema._zod.def;
	const list = schema._zod.traits.has("$ZodCheck") ? [schema, ...def.checks ?? []] : def.checks ?? [];
	for (const ch of list) contributors[ch._zod.def.check]?.(agg, ch._zod.def);
	const bag = schema._zod.bag;
	if (bag.minimum !== void 0) narrowMin(agg, "minimum", bag.minimum);
	if (bag.exclusiveMinimum !== void 0) narrowMin(agg, "exclusiveMinimum", bag.exclusiveMinimum);
	if (bag.maximum !== void 0) narrowMax(agg, "maximum", bag.maximum);
	if (bag.exclusiveMaximum !== void 0) narrowMax(agg, "exclusiveMaximum", bag.exclusiveMaximum);
	if (bag.multipleOf !== void 0) addDivisor(agg, bag.multipleOf);
	if (bag.format !== void 0) {
		agg.format ?? (agg.format = bag.format);
		if (bag.format.includes("int")) agg.isInt = true;
	}
	if (bag.mime) intersectMime(agg, bag.mime);
	for (const pattern of bag.patterns ?? []) addPattern(agg, pattern);
	return agg;
}
const formatMap = {
	guid: "uuid",
	url: "uri",
	datetime: "date-time",
	json_string: "json-string",
	regex: ""
};
const exactPatterns = /* @__PURE__ */ new Map([[base64Charset, base64], [base64urlCharset, base64url]]);
const exactPattern = (p) => exactPatterns.get(p) ?? p;
const stringProcessor = (schema, ctx, _json, _params) => {
	const json = _json;
	json.type = "string";
	const { minimum, maximum, format, patterns, contentEncoding, laxFormat } = aggregateChecks(schema);
	if (typeof minimum === "number") json.minLength = minimum;
	if (typeof maximum === "number") json.maxLength = maximum;
	if (format) {
		json.format = formatMap[format] ?? format;
		if (json.format === "") delete json.format;
		if (format === "time" || laxFormat) delete json.format;
	}
	if (contentEncoding) json.contentEncoding = contentEncoding;
	if (patterns && patterns.size > 0) {
		const patternList = [...patterns].map(exactPattern);
		if (patternList.length === 1) json.pattern = patternList[0].source;
		else if (patternList.length > 1) json.allOf = [...patternList.map((regex) => ({
			...ctx.target === "draft-07" || ctx.target === "draft-04" || ctx.target === "openapi-3.0" ? { type: "string" } : {},
			pattern: regex.source
		}))];
	}
};
const numberProcessor = (schema, ctx, _json, params) => {
	const json = _json;
	const { minimum, maximum, multipleOf, exclusiveMaximum, exclusiveMinimum, isInt } = aggregateChecks(schema);
	json.type = isInt ? "integer" : "number";
	const exMin = typeof exclusiveMinimum === "number" && exclusiveMinimum >= (minimum ?? Number.NEGATIVE_INFINITY);
	const exMax = typeof exclusiveMaximum === "number" && exclusiveMaximum <= (maximum ?? Number.POSITIVE_INFINITY);
	const legacy = ctx.target === "draft-04" || ctx.target === "openapi-3.0";
	if (exMin) {
		if (legacy) {
			json.minimum = exclusiveMinimum;
			json.exclusiveMinimum = true;
		} else json.exclusiveMinimum = exclusiveMinimum;
	} else if (typeof minimum === "number") json.minimum = minimum;
	if (exMax) {
		if (legacy) {
			json.maximum = exclusiveMaximum;
			json.exclusiveMaximum = true;
		} else json.exclusiveMaximum = exclusiveMaximum;
	} else if (typeof maximum === "number") json.maximum = maximum;
	if (multipleOf) {
		const divisors = /* @__PURE__ */ new Set();
		for (const divisor of multipleOf) if (Number.isFinite(divisor) && divisor !== 0) divisors.add(Math.abs(divisor));
		else handleUnrepresentable(schema, ctx, json, params, `A multipleOf divisor of ${divisor} cannot be represented in JSON Schema`);
		const [first, ...rest] = divisors;
		if (first !== void 0) json.multipleOf = first;
		if (rest.length) json.allOf = [...json.allOf ?? [], ...rest.map((m) => ({ multipleOf: m }))];
	}
};
const booleanProcessor = (_schema, _ctx, json, _params) => {
	json.type = "boolean";
};
const bigintProcessor = (schema, ctx, json, params) => {
	handleUnrepresentable(schema, ctx, json, params, "BigInt cannot be represented in JSON Schema");
};
const symbolProcessor = (schema, ctx, json, params) => {
	handleUnrepresentable(schema, ctx, json, params, "Symbols cannot be represented in JSON Schema");
};
const nullProcessor = (_schema, ctx, json, _params) => {
	if (ctx.target === "openapi-3.0") {
		json.type = "string";
		json.nullable = true;
		json.enum = [null];
	} else json.type = "null";
};
const undefinedProcessor = (schema, ctx, json, params) => {
	handleUnrepresentable(schema, ctx, json, params, "Undefined cannot be represented in JSON Schema");
};
const voidProcessor = (schema, ctx, json, params) => {
	handleUnrepresentable(schema, ctx, json, params, "Void cannot be represented in JSON Schema");
};
const neverProcessor = (_schema, _ctx, json, _params) => {
	json.not = {};
};
const anyProcessor = (_schema, _ctx, _json, _params) => {};
const unknownProcessor = (_schema, _ctx, _json, _params) => {};
const dateProcessor = (schema, ctx, json, params) => {
	handleUnrepresentable(schema, ctx, json, params, "Date cannot be represented in JSON Schema");
};
const enumProcessor = (schema, _ctx, json, _params) => {
	const def = schema._zod.def;
	const values = getEnumValues(def.entries);
	if (values.length === 0) {
		json.not = {};
		return;
	}
	if (values.every((v) => typeof v === "number")) json.type = "number";
	if (values.every((v) => typeof v === "string")) json.type = "string";
	json.enum = values;
};
const literalProcessor = (schema, ctx, json, params) => {
	const def = schema._zod.def;
	if (def.values.length === 0) {
		json.not = {};
		return;
	}
	const vals = [];
	for (const val of def.values) if (val === void 0) {
		if (handleUnrepresentable(schema, ctx, json, params, "Literal `undefined` cannot be represented in JSON Schema")) return;
	} else if (typeof val === "bigint") {
		if (handleUnrepresentable(schema, ctx, json, params, "BigInt literals cannot be represented in JSON Schema")) return;
		vals.push(Number(val));
	} else vals.push(val);
	if (vals.length === 0) {} else if (vals.length === 1) {
		const val = vals[0];
		json.type = val === null ? "null" : typeof val;
		if (ctx.target === "draft-04" || ctx.target === "openapi-3.0") json.enum = [val];
		else json.const = val;
	} else {
		if (vals.every((v) => typeof v === "number")) json.type = "number";
		if (vals.every((v) => typeof v === "string")) json.type = "string";
		if (vals.every((v) => typeof v === "boolean")) json.type = "boolean";
		if (vals.every((v) => v === null)) json.type = "null";
		json.enum = vals;
	}
};
const nanProcessor = (schema, ctx, json, params) => {
	handleUnrepresentable(schema, ctx, json, params, "NaN cannot be represented in JSON Schema");
};
const templateLiteralProcessor = (schema, _ctx, json, _params) => {
	const _json = json;
	const pattern = schema._zod.pattern;
	if (!pattern) throw new Error("Pattern not found in template literal");
	_json.type = "string";
	_json.pattern = pattern.source;
};
const fileProcessor = (schema, _ctx, json, _params) => {
	const _json = json;
	_json.type = "string";
	_json.format = "binary";
	_json.contentEncoding = "binary";
	const { minimum, maximum, mime } = aggregateChecks(schema);
	if (minimum !== void 0) _json.minLength = minimum;
	if (maximum !== void 0) _json.maxLength = maximum;
	if (!mime) return;
	if (mime.length === 0) _json.not = {};
	else if (mime.length === 1) _json.contentMediaType = mime[0];
	else _json.anyOf = mime.map((m) => ({ contentMediaType: m }));
};
const successProcessor = (_schema, _ctx, json, _params) => {
	json.type = "boolean";
};
const customProcessor = (schema, ctx, json, params) => {
	handleUnrepresentable(schema, ctx, json, params, "Custom types cannot be represented in JSON Schema");
};
const functionProcessor = (schema, ctx, json, params) => {
	handleUnrepresentable(schema, ctx, json, params, "Function types cannot be represented in JSON Schema");
};
const transformProcessor = (schema, ctx, json, params) => {
	handleUnrepresentable(schema, ctx, json, params, "Transforms cannot be represented in JSON Schema");
};
const mapProcessor = (schema, ctx, json, params) => {
	handleUnrepresentable(schema, ctx, json, params, "Map cannot be represented in JSON Schema");
};
const setProcessor = (schema, ctx, json, params) => {
	handleUnrepresentable(schema, ctx, json, params, "Set cannot be represented in JSON Schema");
};
const arrayProcessor = (schema, ctx, _json, params) => {
	const json = _json;
	const def = schema._zod.def;
	const { minimum, maximum } = aggregateChecks(schema);
	if (typeof minimum === "number") json.minItems = minimum;
	if (typeof maximum === "number") json.maxItems = maximum;
	json.type = "array";
	json.items = processSchema(def.element, ctx, {
		...params,
		path: [...params.path, "items"]
	});
};
function inputOptin(schema) {
	const def = schema._zod.def;
	if (def.type === "pipe" && def.in._zod.traits.has("$ZodTransform")) return inputOptin(def.out);
	if (def.type === "catch") return inputOptin(def.innerType);
	return schema._zod.optin;
}
const objectProcessor = (schema, ctx, _json, params) => {
	const json = _json;
	const def = schema._zod.def;
	const shape = def.shape;
	if (Object.getOwnPropertySymbols(shape).length && handleUnrepresentable(schema, ctx, json, params, "Symbol keys cannot be represented in JSON Schema")) return;
	json.type = "object";
	json.properties = {};
	for (const key in shape) assignProp(json.properties, key, processSchema(shape[key], ctx, {
		...params,
		path: [
			...params.path,
			"properties",
			key
		]
	}));
	const requiredKeys = [];
	for (const key of Object.keys(shape)) {
		const field = def.shape[key];
		if (ctx.io === "input" ? inputOptin(field) === void 0 : field._zod.optout === void 0) requiredKeys.push(key);
	}
	if (requiredKeys.length > 0) json.required = requiredKeys;
	if (def.catchall?._zod.def.type === "never") json.additionalProperties = false;
	else if (!def.catchall) {
		if (ctx.io === "output") json.additionalProperties = false;
	} else if (def.catchall) json.additionalProperties = processSchema(def.catchall, ctx, {
		...params,
		path: [...params.path, "additionalProperties"]
	});
};
const unionProcessor = (schema, ctx, json, params) => {
	const def = schema._zod.def;
	const isExclusive = def.inclusive === false;
	const options = def.options.map((x, i) => processSchema(x, ctx, {
		...params,
		path: [
			...params.path,
			isExclusive ? "oneOf" : "anyOf",
			i
		]
	}));
	if (isExclusive) json.oneOf = options;
	else json.anyOf = options;
};
const intersectionProcessor = (schema, ctx, json, params) => {
	const def = schema._zod.def;
	const a = processSchema(def.left, ctx, {
		...params,
		path: [
			...params.path,
			"allOf",
			0
		]
	});
	const b = processSchema(def.right, ctx, {
		...params,
		path: [
			...params.path,
			"allOf",
			1
		]
	});
	const isSimpleIntersection = (val) => "allOf" in val && Object.keys(val).length === 1;
	const allOf = [...isSimpleIntersection(a) ? a.allOf : [a], ...isSimpleIntersection(b) ? b.allOf : [b]];
	json.allOf = allOf;
	ctx.intersections.push(allOf);
};
const tupleProcessor = (schema, ctx, _json, params) => {
	const json = _json;
	const def = schema._zod.def;
	json.type = "array";
	const prefixPath = ctx.target === "draft-2020-12" ? "prefixItems" : "items";
	const restPath = ctx.target === "draft-2020-12" ? "items" : ctx.target === "openapi-3.0" ? "items" : "additionalItems";
	const prefixItems = def.items.map((x, i) => processSchema(x, ctx, {
		...params,
		path: [
			...params.path,
			prefixPath,
			i
		]
	}));
	const rest = def.rest ? processSchema(def.rest, ctx, {
		...params,
		path: [
			...params.path,
			restPath,
			...ctx.target === "openapi-3.0" ? [def.items.length] : []
		]
	}) : null;
	let minItems = def.items.length;
	while (minItems > 0) {
		const item = def.items[minItems - 1];
		if (!(ctx.io === "input" ? inputOptin(item) !== void 0 : item._zod.optout === "optional")) break;
		minItems--;
	}
	const maxItems = def.items.length;
	const isClosed = !def.rest;
	if (ctx.target === "draft-2020-12") {
		json.prefixItems = prefixItems;
		if (isClosed) json.items = false;
		else if (rest) json.items = rest;
		if (minItems > 0) json.minItems = minItems;
		if (isClosed) json.maxItems = maxItems;
	} else if (ctx.target === "openapi-3.0") {
		json.items = { anyOf: prefixItems };
		if (rest) json.items.anyOf.push(rest);
		if (minItems > 0) json.minItems = minItems;
		if (isClosed) json.maxItems = maxItems;
	} else {
		json.items = prefixItems;
		if (isClosed) json.additionalItems = false;
		else if (rest) json.additionalItems = rest;
		if (minItems > 0) json.minItems = minItems;
		if (isClosed) json.maxItems = maxItems;
	}
	const { minimum, maximum } = aggregateChecks(schema);
	if (typeof minimum === "number") json.minItems = minimum;
	if (typeof maximum === "number") json.maxItems = maximum;
};
/** JSON object keys are always strings, so a numeric record key schema is re-expressed over the
* numeric-string form the record parser matches. Deferred to `finalize`, after the flatten: a key
* behind a wrapper only carries its own `type` before then, and a union key only has its branches.
*
* A numeric bound cannot apply to a property name, so `minimum` and its siblings are dropped rather
* than carried over: keeping them beside `type: "string"` reproduces the match-nothing schema this
* exists to fix. A key that carries one therefore emits wider than the record parses — `z.record(z.number().min(5), V)`
* accepts `"3"` — which is the deliberate trade, since throwing on it would reject an ordinary schema
* outright. */
function stringifyKeyNames(bySchema, json, visited) {
	if (json.$ref) {
		if (visited.has(json)) return json;
		visited.add(json);
		const def = bySchema.get(json)?.def;
		if (!def) return json;
		const inlined = stringifyKeyNames(bySchema, def, visited);
		return inlined === def ? json : inlined;
	}
	for (const keyword of ["anyOf", "oneOf"]) {
		const branches = json[keyword];
		if (!Array.isArray(branches)) continue;
		const mapped = branches.map((branch) => stringifyKeyNames(bySchema, branch, visited));
		if (mapped.some((branch, i) => branch !== branches[i])) json = {
			...json,
			[keyword]: mapped
		};
	}
	const types = Array.isArray(json.type) ? json.type : [json.type];
	const numericType = !types.includes("string") && types.some((t) => t === "number" || t === "integer");
	const values = json.enum ?? (json.const !== void 0 ? [json.const] : void 0);
	if (!numericType && !values?.some((v) => typeof v === "number")) return json;
	const { minimum, maximum, exclusiveMinimum, exclusiveMaximum, multipleOf, format, id, ...rest } = json;
	if (rest.enum) rest.enum = rest.enum.map((v) => typeof v === "number" ? String(v) : v);
	else if (typeof rest.const === "number") rest.const = String(rest.const);
	if (!numericType) return rest;
	rest.type = "string";
	if (!values) rest.pattern = (types.includes("number") ? number$2 : integer).source;
	return rest;
}
/** Every record of one conversion, so the carriers are found in a single pass rather than once per record. */
const pendingRecords = /* @__PURE__ */ new WeakMap();
function rewriteKeyNames(ctx) {
	const bySchema = /* @__PURE__ */ new Map();
	for (const entry of ctx.seen.values()) if (entry.def && !bySchema.has(entry.schema)) bySchema.set(entry.schema, entry);
	const rewrites = /* @__PURE__ */ new Map();
	for (const record of pendingRecords.get(ctx) ?? []) {
		const seen = ctx.seen.get(record);
		const names = (seen?.def ?? seen?.schema)?.propertyNames;
		if (!names || names === true || rewrites.has(names)) continue;
		const rewritten = stringifyKeyNames(bySchema, names, /* @__PURE__ */ new Set());
		if (rewritten !== names) rewrites.set(names, rewritten);
	}
	if (!rewrites.size) return;
	for (const entry of ctx.seen.values()) for (const carrier of [entry.schema, entry.def]) {
		const rewritten = carrier && rewrites.get(carrier.propertyNames);
		if (rewritten) carrier.propertyNames = rewritten;
	}
}
const recordProcessor = (schema, ctx, _json, params) => {
	const json = _json;
	const def = schema._zod.def;
	json.type = "object";
	const keyType = def.keyType;
	const patterns = aggregateChecks(keyType).patterns;
	if (def.mode === "loose" && patterns && patterns.size > 0) {
		const valueSchema = processSchema(def.valueType, ctx, {
			...params,
			path: [
				...params.path,
				"patternProperties",
				"*"
			]
		});
		json.patternProperties = {};
		for (const pattern of patterns) assignProp(json.patternProperties, exactPattern(pattern).source, valueSchema);
	} else {
		if (ctx.target === "draft-07" || ctx.target === "draft-2020-12") {
			json.propertyNames = processSchema(def.keyType, ctx, {
				...params,
				path: [...params.path, "propertyNames"]
			});
			let pending = pendingRecords.get(ctx);
			if (!pending) {
				pending = [];
				pendingRecords.set(ctx, pending);
				ctx.deferred.push(() => rewriteKeyNames(ctx));
			}
			pending.push(schema);
		}
		json.additionalProperties = processSchema(def.valueType, ctx, {
			...params,
			path: [...params.path, "additionalProperties"]
		});
	}
	const keyValues = keyType._zod.values;
	const omittableOnInput = ctx.io === "input" && inputOptin(def.valueType) !== void 0;
	if (keyValues && !def.partial && !omittableOnInput) {
		const validKeyValues = [...keyValues].filter((v) => typeof v === "string" || typeof v === "number");
		if (validKeyValues.length > 0) json.required = validKeyValues.map(String);
	}
};
const nullableProcessor = (schema, ctx, json, params) => {
	const def = schema._zod.def;
	const inner = processSchema(def.innerType, ctx, params);
	const seen = ctx.seen.get(schema);
	if (ctx.target === "openapi-3.0") {
		seen.ref = def.innerType;
		json.nullable = true;
	} else json.anyOf = [inner, { type: "null" }];
};
const nonoptionalProcessor = (schema, ctx, _json, params) => {
	const def = schema._zod.def;
	processSchema(def.innerType, ctx, params);
	const seen = ctx.seen.get(schema);
	seen.ref = def.innerType;
};
/** Round-trips a default value through JSON so the emitted schema is guaranteed to be valid JSON.
* A BigInt has no reliable encoding, so it goes through `unrepresentable` like any other
* unrepresentable value. Returns a sentinel when the caller must not write a default of its own. */
const UNREPRESENTABLE_DEFAULT = Symbol();
function serializeDefaultValue(value, schema, ctx, json, params) {
	let unrepresentable = false;
	const serialized = JSON.stringify(value, (_, val) => {
		if (typeof val !== "bigint") return val;
		unrepresentable = true;
		return null;
	});
	if (!unrepresentable) return JSON.parse(serialized);
	handleUnrepresentable(schema, ctx, json, params, "BigInt defaults cannot be represented in JSON Schema");
	return UNREPRESENTABLE_DEFAULT;
}
const defaultProcessor = (schema, ctx, json, params) => {
	const def = schema._zod.def;
	processSchema(def.innerType, ctx, params);
	const seen = ctx.seen.get(schema);
	seen.ref = def.innerType;
	const value = serializeDefaultValue(def.defaultValue, schema, ctx, json, params);
	if (value !== UNREPRESENTABLE_DEFAULT) json.default = value;
};
const prefaultProcessor = (schema, ctx, json, params) => {
	const def = schema._zod.def;
	processSchema(def.innerType, ctx, params);
	const seen = ctx.seen.get(schema);
	seen.ref = def.innerType;
	if (ctx.io !== "input") return;
	const value = serializeDefaultValue(def.defaultValue, schema, ctx, json, params);
	if (value !== UNREPRESENTABLE_DEFAULT) json._prefault = value;
};
const catchProcessor = (schema, ctx, json, params) => {
	const def = schema._zod.def;
	processSchema(def.innerType, ctx, params);
	const seen = ctx.seen.get(schema);
	seen.ref = def.innerType;
	let catchValue;
	try {
		catchValue = def.catchValue(void 0);
	} catch {
		handleUnrepresentable(schema, ctx, json, params, "Dynamic catch values are not supported in JSON Schema");
		return;
	}
	json.default = catchValue;
};
const pipeProcessor = (schema, ctx, _json, params) => {
	const def = schema._zod.def;
	const inIsTransform = def.in._zod.traits.has("$ZodTransform");
	const innerType = ctx.io === "input" ? inIsTransform ? def.out : def.in : def.out;
	processSchema(innerType, ctx, params);
	const seen = ctx.seen.get(schema);
	seen.ref = innerType;
};
const readonlyProcessor = (schema, ctx, json, params) => {
	const def = schema._zod.def;
	processSchema(def.innerType, ctx, params);
	const seen = ctx.seen.get(schema);
	seen.ref = def.innerType;
	json.readOnly = true;
};
const promiseProcessor = (schema, ctx, _json, params) => {
	const def = schema._zod.def;
	processSchema(def.innerType, ctx, params);
	const seen = ctx.seen.get(schema);
	seen.ref = def.innerType;
};
const optionalProcessor = (schema, ctx, _json, params) => {
	const def = schema._zod.def;
	processSchema(def.innerType, ctx, params);
	const seen = ctx.seen.get(schema);
	seen.ref = def.innerType;
};
const lazyProcessor = (schema, ctx, _json, params) => {
	const innerType = schema._zod.innerType;
	processSchema(innerType, ctx, params);
	const seen = ctx.seen.get(schema);
	seen.ref = innerType;
};
const allProcessors = {
	string: stringProcessor,
	number: numberProcessor,
	boolean: booleanProcessor,
	bigint: bigintProcessor,
	symbol: symbolProcessor,
	null: nullProcessor,
	undefined: undefinedProcessor,
	void: voidProcessor,
	never: neverProcessor,
	any: anyProcessor,
	unknown: unknownProcessor,
	date: dateProcessor,
	enum: enumProcessor,
	literal: literalProcessor,
	nan: nanProcessor,
	template_literal: templateLiteralProcessor,
	file: fileProcessor,
	success: successProcessor,
	custom: customProcessor,
	function: functionProcessor,
	transform: transformProcessor,
	map: mapProcessor,
	set: setProcessor,
	array: arrayProcessor,
	object: objectProcessor,
	union: unionProcessor,
	intersection: intersectionProcessor,
	tuple: tupleProcessor,
	record: recordProcessor,
	nullable: nullableProcessor,
	nonoptional: nonoptionalProcessor,
	default: defaultProcessor,
	prefault: prefaultProcessor,
	catch: catchProcessor,
	pipe: pipeProcessor,
	readonly: readonlyProcessor,
	promise: promiseProcessor,
	optional: optionalProcessor,
	lazy: lazyProcessor
};
function toJSONSchema(input, params) {
	if ("_idmap" in input) {
		const registry = input;
		const ctx = initializeContext({
			...params,
			processors: allProcessors
		});
		const defs = {};
		for (const entry of registry._idmap.entries()) {
			const [_, schema] = entry;
			processSchema(schema, ctx);
		}
		const schemas = {};
		ctx.external = {
			registry,
			uri: params?.uri,
			defs
		};
		for (const entry of registry._idmap.entries()) {
			const [key, schema] = entry;
			extractDefs(ctx, schema);
			assignProp(schemas, key, finalize(ctx, schema));
		}
		if (Object.keys(defs).length > 0) schemas.__shared = { [ctx.target === "draft-2020-12" ? "$defs" : "definitions"]: defs };
		return { schemas };
	}
	const ctx = initializeContext({
		...params,
		processors: allProcessors
	});
	processSchema(input, ctx);
	extractDefs(ctx, input);
	return finalize(ctx, input);
}
// node_modules/zod/v4/classic/errors.js
const _installedErrorProtos = /* @__PURE__ */ new WeakSet([Object.prototype, Error.prototype]);
function _lazyMethod(proto, key, make) {
	Object.defineProperty(proto, key, {
		configurable: true,
		enumerable: false,
		get() {
			const value = make(this);
			Object.defineProperty(this, key, {
				value,
				configurable: true,
				writable: true
			});
			return value;
		},
		set(value) {
			Object.defineProperty(this, key, {
				value,
				configurable: true,
				writable: true
			});
		}
	});
}
const initializer = (inst, issues) => {
	$ZodError.init(inst, issues);
	inst.name = "ZodError";
	const proto = Object.getPrototypeOf(inst);
	if (_installedErrorProtos.has(proto)) return;
	_installedErrorProtos.add(proto);
	_lazyMethod(proto, "format", (self) => (mapper) => formatError(self, mapper));
	_lazyMethod(proto, "flatten", (self) => (mapper) => flattenError(self, mapper));
	_lazyMethod(proto, "addIssue", (self) => (issue) => {
		self.issues.push(issue);
		self.message = JSON.stringify(self.issues, jsonStringifyReplacer, 2);
	});
	_lazyMethod(proto, "addIssues", (self) => (issues) => {
		self.issues.push(...issues);
		self.message = JSON.stringify(self.issues, jsonStringifyReplacer, 2);
	});
	Object.defineProperty(proto, "isEmpty", {
		configurable: true,
		enumerable: false,
		get() {
			return this.issues.length === 0;
		}
	});
};
const ZodRealError = /*@__PURE__*/ $constructor("ZodError", initializer, void 0, { Parent: Error });
// node_modules/zod/v4/classic/parse.js
const parse = /* @__PURE__ */ _parse(ZodRealError);
const parseAsync = /* @__PURE__ */ _parseAsync(ZodRealError);
const safeParse = /* @__PURE__ */ _safeParse(ZodRealError);
const safeParseAsync = /* @__PURE__ */ _safeParseAsync(ZodRealError);
const encode = /* @__PURE__ */ _encode(ZodRealError);
const decode = /* @__PURE__ */ _decode(ZodRealError);
const encodeAsync = /* @__PURE__ */ _encodeAsync(ZodRealError);
const decodeAsync = /* @__PURE__ */ _decodeAsync(ZodRealError);
const safeEncode = /* @__PURE__ */ _safeEncode(ZodRealError);
const safeDecode = /* @__PURE__ */ _safeDecode(ZodRealError);
const safeEncodeAsync = /* @__PURE__ */ _safeEncodeAsync(ZodRealError);
const safeDecodeAsync = /* @__PURE__ */ _safeDecodeAsync(ZodRealError);
// node_modules/zod/v4/classic/schemas.js
function _ensureDefaultLocale() {
	if (!globalConfig.localeError) config(en_default());
}
function _ensureDefaultMemoizer() {
	if (!globalConfig.memoizer) config({ memoizer: memoizer() });
}
const ZodType = /*@__PURE__*/ $constructor("ZodType", (inst, def) => {
	_ensureDefaultLocale();
	$ZodType.init(inst, def);
	inst.def = def;
	inst.type = def.type;
	return inst;
}, {
	check(...chks) {
		const def = this.def;
		return this.clone(mergeDefs(def, { checks: [...def.checks ?? [], ...chks.map((ch) => typeof ch === "function" ? { _zod: {
			check: ch,
			def: { check: "custom" },
			onattach: []
		} } : ch)] }), { parent: true });
	},
	with(...chks) {
		return this.check(...chks);
	},
	clone(def, params) {
		return clone(this, def, params);
	},
	brand() {
		return this;
	},
	register(reg, meta) {
		reg.add(this, meta);
		return this;
	},
	refine(check, params) {
		return this.check(refine(check, params));
	},
	superRefine(refinement, params) {
		return this.check(superRefine(refinement, params));
	},
	overwrite(fn) {
		return this.check(/* @__PURE__ */ _overwrite(fn));
	},
	optional() {
		return optional(this);
	},
	exactOptional() {
		return exactOptional(this);
	},
	nullable() {
		return nullable(this);
	},
	nullish() {
		return optional(nullable(this));
	},
	nonoptional(params) {
		return nonoptional(this, params);
	},
	array() {
		return array(this);
	},
	or(arg) {
		return union([this, arg]);
	},
	and(arg) {
		return intersection(this, arg);
	},
	transform(tx) {
		return pipe(this, transform(tx));
	},
	default(d) {
		return _default(this, d);
	},
	prefault(d) {
		return prefault(this, d);
	},
	catch(params) {
		return _catch(this, params);
	},
	pipe(target) {
		return pipe(this, target);
	},
	readonly() {
		return readonly(this);
	},
	describe(description) {
		const cl = this.clone();
		globalRegistry.add(cl, { description });
		return cl;
	},
	meta(...args) {
		if (args.length === 0) return globalRegistry.get(this);
		const cl = this.clone();
		globalRegistry.add(cl, args[0]);
		return cl;
	},
	isOptional() {
		return this.safeParse(void 0).success;
	},
	isNullable() {
		return this.safeParse(null).success;
	},
	apply(fn, ...args) {
		return args.length === 0 ? fn(this) : fn(this, ...args);
	},
	get "~standard"() {
		return hide(this, "~standard", {
			...standardProps(this),
			jsonSchema: {
				input: createStandardJSONSchemaMethod(this, "input"),
				output: createStandardJSONSchemaMethod(this, "output")
			}
		});
	},
	set "~standard"(value) {
		own(this, "~standard", value);
	},
	parse: function _parse(data, params) {
		return parse(this, data, params, { callee: _parse });
	},
	parseAsync: async function _parseAsync(data, params) {
		return await parseAsync(this, data, params, { callee: _parseAsync });
	},
	safeParse(data, params) {
		return safeParse(this, data, params);
	},
	async safeParseAsync(data, params) {
		return safeParseAsync(this, data, params);
	},
	get spa() {
		return this?.safeParseAsync;
	},
	set spa(value) {
		own(this, "spa", value);
	},
	validate(data, params) {
		return validate(this, data, params);
	},
	validateAsync(data, params) {
		return validateAsync$1(this, data, params);
	},
	encode: function _encode(data, params) {
		return encode(this, data, params, { callee: _encode });
	},
	decode: function _decode(data, params) {
		return decode(this, data, params, { callee: _decode });
	},
	encodeAsync: async function _encodeAsync(data, params) {
		return await encodeAsync(this, data, params, { callee: _encodeAsync });
	},
	decodeAsync: async function _decodeAsync(data, params) {
		return await decodeAsync(this, data, params, { callee: _decodeAsync });
	},
	safeEncode(data, params) {
		return safeEncode(this, data, params);
	},
	safeDecode(data, params) {
		return safeDecode(this, data, params);
	},
	async safeEncodeAsync(data, params) {
		return safeEncodeAsync(this, data, params);
	},
	async safeDecodeAsync(data, params) {
		return safeDecodeAsync(this, data, params);
	},
	toJSONSchema(params) {
		return createToJSONSchemaMethod(this, {})(params);
	},
	get description() {
		return globalRegistry.get(this)?.description;
	},
	get _def() {
		return this._zod.def;
	}
});
/** @internal */
const _ZodString = /*@__PURE__*/ $constructor("_ZodString", (inst, def) => {
	$ZodString.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => stringProcessor(inst, ctx, json, params);
}, /*@__PURE__*/ derived({
	format: (inst) => aggregateChecks(inst).format ?? null,
	minLength: (inst) => aggregateChecks(inst).minimum ?? null,
	maxLength: (inst) => aggregateChecks(inst).maximum ?? null
}, {
	regex(...args) {
		return this.check(/* @__PURE__ */ _regex(...args));
	},
	includes(...args) {
		return this.check(/* @__PURE__ */ _includes(...args));
	},
	startsWith(...args) {
		return this.check(/* @__PURE__ */ _startsWith(...args));
	},
	endsWith(...args) {
		return this.check(/* @__PURE__ */ _endsWith(...args));
	},
	min(...args) {
		return this.check(/* @__PURE__ */ _minLength(...args));
	},
	max(...args) {
		return this.check(/* @__PURE__ */ _maxLength(...args));
	},
	length(...args) {
		return this.check(/* @__PURE__ */ _length(...args));
	},
	nonempty(...args) {
		return this.check(/* @__PURE__ */ _minLength(1, ...args));
	},
	lowercase(params) {
		return this.check(/* @__PURE__ */ _lowercase(params));
	},
	uppercase(params) {
		return this.check(/* @__PURE__ */ _uppercase(params));
	},
	trim() {
		return this.check(/* @__PURE__ */ _trim());
	},
	normalize(...args) {
		return this.check(/* @__PURE__ */ _normalize(...args));
	},
	toLowerCase() {
		return this.check(/* @__PURE__ */ _toLowerCase());
	},
	toUpperCase() {
		return this.check(/* @__PURE__ */ _toUpperCase());
	},
	slugify() {
		return this.check(/* @__PURE__ */ _slugify());
	}
}));
const ZodString = /*@__PURE__*/ $constructor("ZodString", (inst, def) => {
	$ZodString.init(inst, def);
	_ZodString.init(inst, def);
}, {
	email(params) {
		return this.check(/* @__PURE__ */ _email(ZodEmail, params));
	},
	url(params) {
		return this.check(/* @__PURE__ */ _url(ZodURL, params));
	},
	jwt(params) {
		return this.check(/* @__PURE__ */ _jwt(ZodJWT, params));
	},
	emoji(params) {
		return this.check(/* @__PURE__ */ _emoji(ZodEmoji, params));
	},
	guid(params) {
		return this.check(/* @__PURE__ */ _guid(ZodGUID, params));
	},
	uuid(params) {
		return this.check(/* @__PURE__ */ _uuid(ZodUUID, params));
	},
	uuidv4(params) {
		return this.check(/* @__PURE__ */ _uuidv4(ZodUUID, params));
	},
	uuidv6(params) {
		return this.check(/* @__PURE__ */ _uuidv6(ZodUUID, params));
	},
	uuidv7(params) {
		return this.check(/* @__PURE__ */ _uuidv7(ZodUUID, params));
	},
	nanoid(params) {
		return this.check(/* @__PURE__ */ _nanoid(ZodNanoID, params));
	},
	cuid(params) {
		return this.check(/* @__PURE__ */ _cuid(ZodCUID, params));
	},
	cuid2(params) {
		return this.check(/* @__PURE__ */ _cuid2(ZodCUID2, params));
	},
	ulid(params) {
		return this.check(/* @__PURE__ */ _ulid(ZodULID, params));
	},
	base64(params) {
		return this.check(/* @__PURE__ */ _base64(ZodBase64, params));
	},
	base64url(params) {
		return this.check(/* @__PURE__ */ _base64url(ZodBase64URL, params));
	},
	xid(params) {
		return this.check(/* @__PURE__ */ _xid(ZodXID, params));
	},
	ksuid(params) {
		return this.check(/* @__PURE__ */ _ksuid(ZodKSUID, params));
	},
	ipv4(params) {
		return this.check(/* @__PURE__ */ _ipv4(ZodIPv4, params));
	},
	ipv6(params) {
		return this.check(/* @__PURE__ */ _ipv6(ZodIPv6, params));
	},
	cidrv4(params) {
		return this.check(/* @__PURE__ */ _cidrv4(ZodCIDRv4, params));
	},
	cidrv6(params) {
		return this.check(/* @__PURE__ */ _cidrv6(ZodCIDRv6, params));
	},
	e164(params) {
		return this.check(/* @__PURE__ */ _e164(ZodE164, params));
	},
	datetime(params) {
		return this.check(/* @__PURE__ */ _isoDateTime(ZodISODateTime, params));
	},
	date(params) {
		return this.check(/* @__PURE__ */ _isoDate(ZodISODate, params));
	},
	time(params) {
		return this.check(/* @__PURE__ */ _isoTime(ZodISOTime, params));
	},
	duration(params) {
		return this.check(/* @__PURE__ */ _isoDuration(ZodISODuration, params));
	}
});
function string(params) {
	return /* @__PURE__ */ _string(ZodString, params);
}
const ZodStringFormat = /*@__PURE__*/ $constructor("ZodStringFormat", (inst, def) => {
	$ZodStringFormat.init(inst, def);
	_ZodString.init(inst, def);
});
const ZodISODateTime = /*@__PURE__*/ $constructor("ZodISODateTime", (inst, def) => {
	$ZodISODateTime.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodISODate = /*@__PURE__*/ $constructor("ZodISODate", (inst, def) => {
	$ZodISODate.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodISOTime = /*@__PURE__*/ $constructor("ZodISOTime", (inst, def) => {
	$ZodISOTime.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodISODuration = /*@__PURE__*/ $constructor("ZodISODuration", (inst, def) => {
	$ZodISODuration.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodEmail = /*@__PURE__*/ $constructor("ZodEmail", (inst, def) => {
	$ZodEmail.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodGUID = /*@__PURE__*/ $constructor("ZodGUID", (inst, def) => {
	$ZodGUID.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodUUID = /*@__PURE__*/ $constructor("ZodUUID", (inst, def) => {
	$ZodUUID.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodURL = /*@__PURE__*/ $constructor("ZodURL", (inst, def) => {
	$ZodURL.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodEmoji = /*@__PURE__*/ $constructor("ZodEmoji", (inst, def) => {
	$ZodEmoji.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodNanoID = /*@__PURE__*/ $constructor("ZodNanoID", (inst, def) => {
	$ZodNanoID.init(inst, def);
	ZodStringFormat.init(inst, def);
});
/**
* @deprecated CUID v1 is deprecated by its authors due to information leakage
* (timestamps embedded in the id). Use {@link ZodCUID2} instead.
* See https://github.com/paralleldrive/cuid.
*/
const ZodCUID = /*@__PURE__*/ $constructor("ZodCUID", (inst, def) => {
	$ZodCUID.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodCUID2 = /*@__PURE__*/ $constructor("ZodCUID2", (inst, def) => {
	$ZodCUID2.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodULID = /*@__PURE__*/ $constructor("ZodULID", (inst, def) => {
	$ZodULID.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodXID = /*@__PURE__*/ $constructor("ZodXID", (inst, def) => {
	$ZodXID.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodKSUID = /*@__PURE__*/ $constructor("ZodKSUID", (inst, def) => {
	$ZodKSUID.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodIPv4 = /*@__PURE__*/ $constructor("ZodIPv4", (inst, def) => {
	$ZodIPv4.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodIPv6 = /*@__PURE__*/ $constructor("ZodIPv6", (inst, def) => {
	$ZodIPv6.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodCIDRv4 = /*@__PURE__*/ $constructor("ZodCIDRv4", (inst, def) => {
	$ZodCIDRv4.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodCIDRv6 = /*@__PURE__*/ $constructor("ZodCIDRv6", (inst, def) => {
	$ZodCIDRv6.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodBase64 = /*@__PURE__*/ $constructor("ZodBase64", (inst, def) => {
	$ZodBase64.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodBase64URL = /*@__PURE__*/ $constructor("ZodBase64URL", (inst, def) => {
	$ZodBase64URL.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodE164 = /*@__PURE__*/ $constructor("ZodE164", (inst, def) => {
	$ZodE164.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodJWT = /*@__PURE__*/ $constructor("ZodJWT", (inst, def) => {
	$ZodJWT.init(inst, def);
	ZodStringFormat.init(inst, def);
});
const ZodNumber = /*@__PURE__*/ $constructor("ZodNumber", (inst, def) => {
	$ZodNumber.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => numberProcessor(inst, ctx, json, params);
	inst.isFinite = true;
}, /*@__PURE__*/ derived({
	minValue: (inst) => {
		const { minimum, exclusiveMinimum } = aggregateChecks(inst);
		return Math.max(minimum ?? Number.NEGATIVE_INFINITY, exclusiveMinimum ?? Number.NEGATIVE_INFINITY);
	},
	maxValue: (inst) => {
		const { maximum, exclusiveMaximum } = aggregateChecks(inst);
		return Math.min(maximum ?? Number.POSITIVE_INFINITY, exclusiveMaximum ?? Number.POSITIVE_INFINITY);
	},
	isInt: (inst) => {
		const { isInt, multipleOf } = aggregateChecks(inst);
		return !!isInt || !!multipleOf?.some(Number.isSafeInteger);
	},
	format: (inst) => aggregateChecks(inst).format ?? null
}, {
	gt(value, params) {
		return this.check(/* @__PURE__ */ _gt(value, params));
	},
	gte(value, params) {
		return this.check(/* @__PURE__ */ _gte(value, params));
	},
	min(value, params) {
		return this.check(/* @__PURE__ */ _gte(value, params));
	},
	lt(value, params) {
		return this.check(/* @__PURE__ */ _lt(value, params));
	},
	lte(value, params) {
		return this.check(/* @__PURE__ */ _lte(value, params));
	},
	max(value, params) {
		return this.check(/* @__PURE__ */ _lte(value, params));
	},
	int(params) {
		return this.check(int(params));
	},
	safe(params) {
		return this.check(int(params));
	},
	positive(params) {
		return this.check(/* @__PURE__ */ _gt(0, params));
	},
	nonnegative(params) {
		return this.check(/* @__PURE__ */ _gte(0, params));
	},
	negative(params) {
		return this.check(/* @__PURE__ */ _lt(0, params));
	},
	nonpositive(params) {
		return this.check(/* @__PURE__ */ _lte(0, params));
	},
	multipleOf(value, params) {
		return this.check(/* @__PURE__ */ _multipleOf(value, params));
	},
	step(value, params) {
		return this.check(/* @__PURE__ */ _multipleOf(value, params));
	},
	finite() {
		return this;
	}
}));
function number$1(params) {
	return /* @__PURE__ */ _number(ZodNumber, params);
}
const ZodNumberFormat = /*@__PURE__*/ $constructor("ZodNumberFormat", (inst, def) => {
	$ZodNumberFormat.init(inst, def);
	ZodNumber.init(inst, def);
});
function int(params) {
	return /* @__PURE__ */ _int(ZodNumberFormat, params);
}
const ZodBoolean = /*@__PURE__*/ $constructor("ZodBoolean", (inst, def) => {
	$ZodBoolean.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => booleanProcessor(inst, ctx, json, params);
});
function boolean(params) {
	return /* @__PURE__ */ _boolean(ZodBoolean, params);
}
const ZodUnknown = /*@__PURE__*/ $constructor("ZodUnknown", (inst, def) => {
	$ZodUnknown.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => void 0;
});
function unknown$2() {
	return /* @__PURE__ */ _unknown(ZodUnknown);
}
const ZodNever = /*@__PURE__*/ $constructor("ZodNever", (inst, def) => {
	$ZodNever.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => neverProcessor(inst, ctx, json, params);
});
function never(params) {
	return /* @__PURE__ */ _never(ZodNever, params);
}
const ZodArray = /*@__PURE__*/ $constructor("ZodArray", (inst, def) => {
	_ensureDefaultMemoizer();
	$ZodArray.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => arrayProcessor(inst, ctx, json, params);
	inst.element = def.element;
}, {
	min(n, params) {
		return this.check(/* @__PURE__ */ _minLength(n, params));
	},
	nonempty(params) {
		return this.check(/* @__PURE__ */ _minLength(1, params));
	},
	max(n, params) {
		return this.check(/* @__PURE__ */ _maxLength(n, params));
	},
	length(n, params) {
		return this.check(/* @__PURE__ */ _length(n, params));
	},
	unwrap() {
		return this.element;
	}
});
function array(element, params) {
	return /* @__PURE__ */ _array(ZodArray, element, params);
}
const ZodObject = /*@__PURE__*/ $constructor("ZodObject", (inst, def) => {
	_ensureDefaultMemoizer();
	$ZodObjectJIT.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => objectProcessor(inst, ctx, json, params);
	installLazyProp(inst, "shape", (self) => self._zod.def.shape, false);
}, {
	keyof() {
		return _enum(Object.keys(this._zod.def.shape));
	},
	catchall(catchall) {
		return this.clone(mergeDefs(this._zod.def, { catchall }));
	},
	passthrough() {
		return this.clone(mergeDefs(this._zod.def, { catchall: unknown$2() }));
	},
	loose() {
		return this.clone(mergeDefs(this._zod.def, { catchall: unknown$2() }));
	},
	strict() {
		return this.clone(mergeDefs(this._zod.def, { catchall: never() }));
	},
	strip() {
		return this.clone(mergeDefs(this._zod.def, { catchall: void 0 }));
	},
	extend(incoming) {
		return extend(this, incoming);
	},
	safeExtend(incoming) {
		return safeExtend(this, incoming);
	},
	merge(other) {
		return merge(this, other);
	},
	pick(mask) {
		return pick(this, mask);
	},
	omit(mask) {
		return omit(this, mask);
	},
	partial(...args) {
		return partial(ZodOptional, this, args[0]);
	},
	exactPartial(...args) {
		return partial(ZodExactOptional, this, args[0], "exactPartial");
	},
	required(...args) {
		return required(ZodNonOptional, this, args[0]);
	}
});
function strictObject(shape, params) {
	return new ZodObject({
		type: "object",
		shape,
		catchall: never(),
		...normalizeParams(params)
	});
}
const ZodUnion = /*@__PURE__*/ $constructor("ZodUnion", (inst, def) => {
	$ZodUnion.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => unionProcessor(inst, ctx, json, params);
	inst.options = def.options;
});
function union(options, params) {
	return new ZodUnion({
		type: "union",
		options,
		...normalizeParams(params)
	});
}
const ZodDiscriminatedUnion = /*@__PURE__*/ $constructor("ZodDiscriminatedUnion", (inst, def) => {
	ZodUnion.init(inst, def);
	$ZodDiscriminatedUnion.init(inst, def);
});
function discriminatedUnion(discriminator, options, params) {
	return new ZodDiscriminatedUnion({
		type: "union",
		options,
		discriminator,
		...normalizeParams(params)
	});
}
const ZodIntersection = /*@__PURE__*/ $constructor("ZodIntersection", (inst, def) => {
	$ZodIntersection.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => intersectionProcessor(inst, ctx, json, params);
});
function intersection(left, right) {
	return new ZodIntersection({
		type: "intersection",
		left,
		right
	});
}
const ZodEnum = /*@__PURE__*/ $constructor("ZodEnum", (inst, def) => {
	$ZodEnum.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => enumProcessor(inst, ctx, json, params);
	inst.enum = def.entries;
	inst.options = [...inst._zod.values];
	const keys = new Set(Object.keys(def.entries));
	inst.extract = (values, params) => {
		const newEntries = {};
		for (const value of values) if (keys.has(value)) newEntries[value] = def.entries[value];
		else throw new Error(`Key ${value} not found in enum`);
		return new ZodEnum({
			...def,
			checks: [],
			...normalizeParams(params),
			entries: newEntries
		});
	};
	inst.exclude = (values, params) => {
		const newEntries = { ...def.entries };
		for (const value of values) if (keys.has(value)) delete newEntries[value];
		else throw new Error(`Key ${value} not found in enum`);
		return new ZodEnum({
			...def,
			checks: [],
			...normalizeParams(params),
			entries: newEntries
		});
	};
});
function _enum(values, params) {
	const entries = Array.isArray(values) ? Object.fromEntries(values.map((v) => [v, v])) : values;
	return new ZodEnum({
		type: "enum",
		entries,
		...normalizeParams(params)
	});
}
const ZodLiteral = /*@__PURE__*/ $constructor("ZodLiteral", (inst, def) => {
	$ZodLiteral.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => literalProcessor(inst, ctx, json, params);
	inst.values = new Set(def.values);
	Object.defineProperty(inst, "value", { get() {
		if (def.values.length > 1) throw new Error("This schema contains multiple valid literal values. Use `.values` instead.");
		return def.values[0];
	} });
});
function literal(value, params) {
	return new ZodLiteral({
		type: "literal",
		values: Array.isArray(value) ? value : [value],
		...normalizeParams(params)
	});
}
const ZodTransform = /*@__PURE__*/ $constructor("ZodTransform", (inst, def) => {
	_ensureDefaultMemoizer();
	$ZodTransform.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => transformProcessor(inst, ctx, json, params);
	inst._zod.parse = (payload, _ctx) => {
		if (_ctx.direction === "backward") throw new $ZodEncodeError(inst.constructor.name);
		payload.addIssue = (issue$1) => {
			if (typeof issue$1 === "string") payload.issues.push(issue(issue$1, payload.value, def));
			else {
				const _issue = issue$1;
				if (_issue.fatal) _issue.continue = false;
				_issue.code ?? (_issue.code = "custom");
				if (!("input" in _issue)) _issue.input = payload.value;
				_issue.inst ?? (_issue.inst = inst);
				payload.issues.push(issue(_issue));
			}
		};
		const output = def.transform(payload.value, payload);
		if (output instanceof Promise) return output.then((output) => {
			payload.value = output;
			return payload;
		});
		payload.value = output;
		return payload;
	};
});
function transform(fn) {
	return new ZodTransform({
		type: "transform",
		transform: fn
	});
}
const ZodOptional = /*@__PURE__*/ $constructor("ZodOptional", (inst, def) => {
	$ZodOptional.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => optionalProcessor(inst, ctx, json, params);
	inst.unwrap = () => inst._zod.def.innerType;
});
function optional(innerType) {
	return new ZodOptional({
		type: "optional",
		innerType
	});
}
const ZodExactOptional = /*@__PURE__*/ $constructor("ZodExactOptional", (inst, def) => {
	$ZodExactOptional.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => optionalProcessor(inst, ctx, json, params);
	inst.unwrap = () => inst._zod.def.innerType;
});
function exactOptional(innerType) {
	return new ZodExactOptional({
		type: "optional",
		innerType
	});
}
const ZodNullable = /*@__PURE__*/ $constructor("ZodNullable", (inst, def) => {
	$ZodNullable.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => nullableProcessor(inst, ctx, json, params);
	inst.unwrap = () => inst._zod.def.innerType;
});
function nullable(innerType) {
	return new ZodNullable({
		type: "nullable",
		innerType
	});
}
const ZodDefault = /*@__PURE__*/ $constructor("ZodDefault", (inst, def) => {
	$ZodDefault.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => defaultProcessor(inst, ctx, json, params);
	inst.unwrap = () => inst._zod.def.innerType;
	inst.removeDefault = inst.unwrap;
});
function _default(innerType, defaultValue) {
	return new ZodDefault({
		type: "default",
		innerType,
		get defaultValue() {
			return typeof defaultValue === "function" ? defaultValue() : shallowClone(defaultValue);
		}
	});
}
const ZodPrefault = /*@__PURE__*/ $constructor("ZodPrefault", (inst, def) => {
	$ZodPrefault.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => prefaultProcessor(inst, ctx, json, params);
	inst.unwrap = () => inst._zod.def.innerType;
});
function prefault(innerType, defaultValue) {
	return new ZodPrefault({
		type: "prefault",
		innerType,
		get defaultValue() {
			return typeof defaultValue === "function" ? defaultValue() : shallowClone(defaultValue);
		}
	});
}
const ZodNonOptional = /*@__PURE__*/ $constructor("ZodNonOptional", (inst, def) => {
	$ZodNonOptional.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => nonoptionalProcessor(inst, ctx, json, params);
	inst.unwrap = () => inst._zod.def.innerType;
});
function nonoptional(innerType, params) {
	return new ZodNonOptional({
		type: "nonoptional",
		innerType,
		...normalizeParams(params)
	});
}
const ZodCatch = /*@__PURE__*/ $constructor("ZodCatch", (inst, def) => {
	$ZodCatch.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => catchProcessor(inst, ctx, json, params);
	inst.unwrap = () => inst._zod.def.innerType;
	inst.removeCatch = inst.unwrap;
});
function _catch(innerType, catchValue) {
	return new ZodCatch({
		type: "catch",
		innerType,
		catchValue: typeof catchValue === "function" ? catchValue : constantCatch(catchValue)
	});
}
const ZodPipe = /*@__PURE__*/ $constructor("ZodPipe", (inst, def) => {
	$ZodPipe.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => pipeProcessor(inst, ctx, json, params);
	inst.in = def.in;
	inst.out = def.out;
});
function pipe(in_, out) {
	return new ZodPipe({
		type: "pipe",
		in: in_,
		out
	});
}
const ZodReadonly = /*@__PURE__*/ $constructor("ZodReadonly", (inst, def) => {
	$ZodReadonly.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => readonlyProcessor(inst, ctx, json, params);
	inst.unwrap = () => inst._zod.def.innerType;
});
function readonly(innerType) {
	return new ZodReadonly({
		type: "readonly",
		innerType
	});
}
const ZodCustom = /*@__PURE__*/ $constructor("ZodCustom", (inst, def) => {
	$ZodCustom.init(inst, def);
	ZodType.init(inst, def);
	inst._zod.processJSONSchema = (ctx, json, params) => customProcessor(inst, ctx, json, params);
});
function refine(fn, _params = {}) {
	return /* @__PURE__ */ _refine(ZodCustom, fn, _params);
}
function superRefine(fn, params) {
	return /* @__PURE__ */ _superRefine(fn, params);
}
// src/shared/quantities.ts
const quantity = (label, unit, min, max, help) => ({
	label,
	unit,
	min,
	max,
	help
});
const quantities = {
	overlap: quantity("overlap", "mm", 1, 500, "Bonded length, from the sleeve root to its mouth."),
	outsideDiameter: quantity("outside diameter", "mm", 2, 1e3, "Outside diameter of the tube."),
	wall: quantity("wall", "mm", .1, 50, "Thickness of the wall."),
	plyThickness: quantity("ply thickness", "mm", .01, 5, "Thickness of one cured ply."),
	width: quantity("width", "mm", 1, 1e3, "Width of the strips across the load."),
	gap: quantity("gap", "mm", .01, 5, "Nominal thickness of the adhesive bondline."),
	gapTolerance: quantity("gap tolerance", "mm", 0, 5, "Plus-or-minus on the gap, from the fits."),
	offset: quantity("offset", "mm", 0, 5, "Distance of the tube's axis from the sleeve's axis: thins the gap on one side."),
	modulus: quantity("modulus", "MPa", 100, 1e6, "Young's modulus."),
	shearModulus: quantity("shear modulus", "MPa", 20, 5e5, "Shear modulus."),
	poisson: quantity("Poisson ratio", "1", 0, .49, "Contraction across over extension along."),
	laminatePoisson: quantity("Poisson ratio", "1", -.5, 1.5, "Hoop contraction over axial extension; angle-ply laminates can exceed 0.5."),
	expansion: quantity("thermal expansion", "1/K", -2e-5, 2e-4, "Linear thermal expansion coefficient."),
	density: quantity("density", "kg/m³", 10, 25e3, "Mass over volume."),
	strength: quantity("strength", "MPa", 1, 1e4, "Stress at which the part is taken to fail."),
	adhesiveModulus: quantity("adhesive modulus", "MPa", 1, 2e4, "Young's modulus, bulk."),
	adhesiveShearModulus: quantity("adhesive shear modulus", "MPa", .5, 1e4, "From a thick-adherend shear test, at this temperature and moisture."),
	shearYield: quantity("shear yield stress", "MPa", .1, 500, "Plateau of the shear stress-strain curve, idealised as elastic, then perfectly plastic."),
	plasticStrain: quantity("plastic shear strain", "1", 0, 5, "Shear strain from yield to failure, beyond the elastic part."),
	peelStrength: quantity("peel strength", "MPa", .1, 500, "Stress across the bond at which it opens, at this temperature and moisture."),
	interlaminarStrength: quantity("interlaminar strength", "MPa", 1, 1e3, "Stress between plies at which the laminate parts."),
	fractureEnergy: quantity("fracture energy", "N/mm", .001, 100, "Energy that a crack in the bond takes per area; 1 N/mm is 1 kJ/m²."),
	fractureExponent: quantity("mode-mix exponent", "1", .5, 4, "Exponent m of (G_I/G_Ic)^m + (G_II/G_IIc)^m = 1."),
	knockdown: quantity("knockdown", "1", .05, 1.5, "What is left of the strength: 1 takes nothing away."),
	temperature: quantity("temperature", "°C", -200, 400, "Temperature in service or of cure."),
	force: quantity("axial force", "N", -1e7, 1e7, "Along the tube; tension positive."),
	moment: quantity("bending moment", "N·mm", -1e9, 1e9, "At the mouth of the sleeve."),
	torque: quantity("torque", "N·mm", -1e9, 1e9, "About the axis of the tube."),
	shear: quantity("transverse shear", "N", -1e7, 1e7, "Across the tube, in the plane of bending."),
	cycles: quantity("cycles", "cycles", 1, 0xe8d4a51000, "Number of load cycles in the life."),
	factor: quantity("factor", "1", .1, 20, "Multiplies the loads before strength is compared."),
	loadFactor: quantity("load factor", "1", 0, 100, "Multiplies the loads of the joint."),
	wallFactor: quantity("wall factor", "1", .1, 10, "Multiplies the walls of the sleeve."),
	targetMargin: quantity("target margin", "1", -.5, 20, "Margins below it are marked low."),
	fatigueCoefficient: quantity("S-N coefficient", "1", .01, 10, "Peak shear over yield shear, extrapolated to one cycle."),
	fatigueExponent: quantity("S-N exponent", "1", 0, 1, "Slope of the S-N line in log-log."),
	layerThickness: quantity("layer thickness", "mm", .005, 1, "Thickness of one printed layer."),
	printBase: quantity("base", "mm", 0, 1e3, "Height of solid metal printed under the root of the sleeve."),
	step: quantity("step", "mm", .001, 100, "What sizing rounds to."),
	toleranceSize: quantity("spread", "mm", 0, 100, "Of a size."),
	toleranceTemperature: quantity("spread", "°C", 0, 200, "Of a temperature."),
	toleranceShare: quantity("spread", "1", 0, .9, "Share of the value: 0.05 is 5 %.")
};
// src/shared/project-fields.ts
/** What fields of the project file are made of: numbers in their range, ids, names, sources. */
config({ jitless: true });
const withUnit = (value, unit) => unit === "1" ? `${value}` : `${value} ${unit}`;
/** A finite number inside the declared physical range of the quantity. */
const number = (name) => {
	const { label, unit, min, max, help } = quantities[name];
	const range = `${label} must be a number from ${min} to ${withUnit(max, unit)}`;
	return number$1({ error: range }).min(min, { error: range }).max(max, { error: range }).describe(unit === "1" ? help : `${help} Unit: ${unit}.`);
};
const id$1 = string({ error: "an id is a short text of letters, digits and hyphens" }).regex(/^[a-z0-9][a-z0-9-]{0,63}$/, { error: "an id is 1 to 64 lower-case letters, digits and hyphens" });
const name$1 = string({ error: "a name is a text" }).min(1, { error: "a name cannot be empty" }).max(120, { error: "a name is at most 120 characters" });
const note$1 = string().max(4e3, { error: "a note is at most 4000 characters" });
/** Where a property set comes from. `typical` and `memory` are marked wherever they are used. */
const sourceSchema = strictObject({
	kind: _enum([
		"typical",
		"memory",
		"published",
		"tested"
	]),
	text: string().max(400)
});
// src/shared/project-joints.ts
/** Joints of the project file: one schema for each type, walls, bonds and loads among them. */
const wallSchema = strictObject({
	adherend: id$1,
	atRoot: number("wall"),
	atMouth: number("wall")
}).describe("A sleeve wall, its thickness linear from the root to the mouth.");
const bondSchema = strictObject({
	gap: number("gap"),
	tolerance: number("gapTolerance")
});
const tubeSchema = strictObject({
	adherend: id$1,
	outsideDiameter: number("outsideDiameter"),
	wall: number("wall")
});
const stripSchema = strictObject({
	adherend: id$1,
	thickness: number("wall")
});
const sleeveLoads = array(strictObject({
	case: id$1,
	force: number("force"),
	moment: number("moment"),
	torque: number("torque"),
	shear: number("shear")
})).max(200);
const flatLoads = array(strictObject({
	case: id$1,
	force: number("force")
})).max(200);
const sizeCommon = {
	id: id$1,
	name: name$1,
	wallFactor: number("wallFactor").optional().describe("Multiplies the walls of sleeve, plate or straps; 1 when left out."),
	loadFactor: number("loadFactor").optional().describe("Multiplies the loads; 1 when left out. With `loads` of its own, those.")
};
const sizesOf = (size) => array(size).max(40, { error: "a joint has at most 40 sizes" }).optional().describe("The same joint in other sizes of the frame: what differs from the joint itself.");
const sleeveSizes = sizesOf(strictObject({
	...sizeCommon,
	outsideDiameter: number("outsideDiameter").optional(),
	tubeWall: number("wall").optional(),
	loads: sleeveLoads.optional()
}));
const flatSizes = sizesOf(strictObject({
	...sizeCommon,
	width: number("width").optional(),
	thickness: number("wall").optional(),
	loads: flatLoads.optional()
}));
const jointCommon = {
	id: id$1,
	name: name$1,
	overlap: number("overlap"),
	adhesive: id$1
};
const jointSchema = discriminatedUnion("type", [
	strictObject({
		...jointCommon,
		type: literal("sleeve-single"),
		side: _enum(["socket", "spigot"], { error: "side is \"socket\" (sleeve outside the tube) or \"spigot\" (sleeve inside the tube)" }),
		tube: tubeSchema,
		sleeve: wallSchema,
		bond: bondSchema,
		offset: number("offset"),
		loads: sleeveLoads,
		sizes: sleeveSizes
	}),
	strictObject({
		...jointCommon,
		type: literal("sleeve-double"),
		tube: tubeSchema,
		spigot: wallSchema,
		socket: wallSchema,
		innerBond: bondSchema,
		outerBond: bondSchema,
		offset: number("offset"),
		loads: sleeveLoads,
		sizes: sleeveSizes
	}),
	strictObject({
		...jointCommon,
		type: literal("flat-single"),
		width: number("width"),
		strip: stripSchema,
		plate: wallSchema,
		bond: bondSchema,
		loads: flatLoads,
		sizes: flatSizes
	}),
	strictObject({
		...jointCommon,
		type: literal("flat-double"),
		width: number("width"),
		strip: stripSchema,
		lowerStrap: wallSchema,
		upperStrap: wallSchema,
		lowerBond: bondSchema,
		upperBond: bondSchema,
		loads: flatLoads,
		sizes: flatSizes
	})
], { error: "a joint is of type \"sleeve-single\", \"sleeve-double\", \"flat-single\" or \"flat-double\"" });
// src/shared/project-materials.ts
/** Materials of the project file: adherends, the plies of laminates, adhesives. */
const density = number("density").optional().describe("Left out, masses with it are not known. Unit: kg/m³.");
const isotropic = strictObject({
	id: id$1,
	name: name$1,
	kind: literal("isotropic"),
	modulus: number("modulus"),
	poisson: number("poisson"),
	expansion: number("expansion"),
	yieldStrength: number("strength"),
	ultimateStrength: number("strength"),
	density,
	source: sourceSchema
});
/** What peel needs to know of a wall through its thickness; what is left out is not checked, and said. */
const throughThickness = {
	throughModulus: number("modulus").optional().describe("E3, through the thickness; left out, the wall is taken as rigid there. Unit: MPa."),
	throughExpansion: number("expansion").optional().describe("Expansion through the thickness; left out, thermal peel leaves it out. Unit: 1/K."),
	interlaminarTension: number("interlaminarStrength").optional().describe("Strength through the thickness, between plies. Unit: MPa."),
	interlaminarShear: number("interlaminarStrength").optional().describe("Shear strength between plies, axial-radial. Unit: MPa.")
};
const orthotropic = strictObject({
	id: id$1,
	name: name$1,
	kind: literal("orthotropic"),
	axialModulus: number("modulus"),
	hoopModulus: number("modulus"),
	shearModulus: number("shearModulus").describe("In-plane shear modulus, axial-hoop; carries torsion. Unit: MPa."),
	poisson: number("laminatePoisson"),
	axialExpansion: number("expansion"),
	hoopExpansion: number("expansion"),
	throughShearModulus: number("shearModulus").describe("Through-thickness shear modulus, axial-radial. Unit: MPa."),
	tensileStrength: number("strength").describe("Axial tension. Unit: MPa."),
	compressiveStrength: number("strength").describe("Axial compression, as a positive number. Unit: MPa."),
	shearStrength: number("strength").describe("In-plane shear. Unit: MPa."),
	...throughThickness,
	density,
	source: sourceSchema
});
/** Tubes of plies: properties follow from the stack by lamination theory. */
const laminate = strictObject({
	id: id$1,
	name: name$1,
	kind: literal("laminate"),
	ply: id$1.describe("Id of the ply it is made of."),
	stack: string({ error: "a stack is a text such as \"[0/±45/90]s\"" }).min(1).max(400, { error: "a stack is at most 400 characters" }).describe("Ply angles from the axis of the tube, the innermost first, such as \"[0/±45/90]s\"."),
	source: sourceSchema
});
/** One unidirectional ply; across the fibres it is the same in all directions. */
const plySchema = strictObject({
	id: id$1,
	name: name$1,
	axialModulus: number("modulus").describe("Along the fibres, E1. Unit: MPa."),
	transverseModulus: number("modulus").describe("Across the fibres, E2. Unit: MPa."),
	shearModulus: number("shearModulus").describe("In the plane of the ply, G12. Unit: MPa."),
	poisson: number("poisson").describe("ν12: contraction across over extension along the fibres."),
	transverseShearModulus: number("shearModulus").describe("Across the fibres, G23. Unit: MPa."),
	axialExpansion: number("expansion"),
	transverseExpansion: number("expansion"),
	thickness: number("plyThickness"),
	tensileStrength: number("strength").describe("Along the fibres, tension. Unit: MPa."),
	compressiveStrength: number("strength").describe("Along the fibres, compression, as a positive number. Unit: MPa."),
	transverseTensileStrength: number("strength").describe("Across the fibres, tension. Unit: MPa."),
	transverseCompressiveStrength: number("strength").describe("Across the fibres, compression, as a positive number. Unit: MPa."),
	shearStrength: number("strength").describe("In the plane of the ply. Unit: MPa."),
	interlaminarTension: number("interlaminarStrength"),
	interlaminarShear: number("interlaminarStrength"),
	density,
	source: sourceSchema
});
const adherendSchema = discriminatedUnion("kind", [
	isotropic,
	orthotropic,
	laminate
], { error: "an adherend is of kind \"isotropic\", \"orthotropic\" or \"laminate\"" });
const moistureSchema = _enum(["dry", "wet"], { error: "moisture is \"dry\" or \"wet\"" });
const adhesiveState = strictObject({
	temperature: number("temperature"),
	moisture: moistureSchema,
	modulus: number("adhesiveModulus"),
	shearModulus: number("adhesiveShearModulus"),
	shearYield: number("shearYield"),
	plasticStrain: number("plasticStrain"),
	peelStrength: number("peelStrength").optional()
});
/** What is taken off the strengths of an adhesive, step by step. */
const knockdowns = strictObject({
	environment: number("knockdown").describe("Beyond what the rows of temperature and moisture already say."),
	ageing: number("knockdown").describe("Loss over the life of the joint."),
	scatter: number("knockdown").describe("From the mean of coupons to what may be designed to."),
	gap: array(strictObject({
		gap: number("gap"),
		factor: number("knockdown")
	})).max(40).describe("Strength against gap, from coupons; linear between, the nearest beyond."),
	source: sourceSchema
});
const adhesiveSchema = strictObject({
	id: id$1,
	name: name$1,
	stressFreeTemperature: number("temperature").describe("Temperature at which the joint is free of thermal stress; the cure temperature unless known better. Unit: °C."),
	states: array(adhesiveState).min(1, { error: "an adhesive needs at least one state" }).max(40, { error: "an adhesive has at most 40 states" }).describe("Properties at several temperatures, dry and wet; interpolated in temperature."),
	expansion: number("expansion").optional().describe("Expansion of the adhesive; left out, its own shrinkage is left out. Unit: 1/K."),
	fracture: strictObject({
		modeI: number("fractureEnergy").describe("Opening, G_Ic. Unit: N/mm."),
		modeII: number("fractureEnergy").describe("Sliding, G_IIc. Unit: N/mm."),
		exponent: number("fractureExponent"),
		source: sourceSchema
	}).optional(),
	knockdowns: knockdowns.optional(),
	fatigue: strictObject({
		coefficient: number("fatigueCoefficient"),
		exponent: number("fatigueExponent"),
		source: sourceSchema
	}).optional().describe("S-N line: allowed peak shear = yield × min(1, coefficient × cycles^−exponent)."),
	density,
	source: sourceSchema
});
// src/shared/project-settings.ts
/** Settings of the project file: what is asked of every joint, and how it is made. */
/** Inputs that scatter, by what their spread is measured in. */
const toleranceInputs = {
	mm: [
		"overlap",
		"gap",
		"offset",
		"tube-diameter",
		"tube-wall",
		"sleeve-wall"
	],
	"°C": ["service-temperature", "stress-free-temperature"],
	"1": [
		"tube-modulus",
		"sleeve-modulus",
		"adhesive-modulus",
		"shear-yield",
		"plastic-strain",
		"peel-strength",
		"interlaminar-strength",
		"laminate-strength",
		"metal-strength",
		"load"
	]
};
const distribution = _enum([
	"normal",
	"uniform",
	"triangular"
], { error: "distribution is \"normal\", \"uniform\" or \"triangular\"" });
const NO_INPUT = { error: `input is one of ${Object.values(toleranceInputs).flat().join(", ")}` };
const toleranceSchema = discriminatedUnion("input", [
	strictObject({
		input: _enum(toleranceInputs.mm),
		distribution,
		spread: number("toleranceSize")
	}),
	strictObject({
		input: _enum(toleranceInputs["°C"]),
		distribution,
		spread: number("toleranceTemperature")
	}),
	strictObject({
		input: _enum(toleranceInputs["1"]),
		distribution,
		spread: number("toleranceShare")
	})
], NO_INPUT).describe("How an input scatters. Spread: the standard deviation (normal) or half of the width (uniform, triangular).");
const settingsSchema = strictObject({
	targetMargin: number("targetMargin"),
	factors: strictObject({
		limit: number("factor").describe("Asked of limit and cyclic loads before yield."),
		ultimate: number("factor").describe("Asked of limit and cyclic loads before failure."),
		fitting: number("factor").describe("Asked in addition of every mode, at a joint.")
	}).describe("An ultimate case already contains its factor: only the fitting factor is added."),
	adherendShear: boolean().describe("Include the shear flexibility of the adherends in the shear lag."),
	edgeMoment: _enum(["goland-reissner", "hart-smith"], { error: "edgeMoment is \"goland-reissner\" or \"hart-smith\"" }).optional().describe("Edge moment of flat single laps; Goland and Reissner when left out."),
	printing: strictObject({
		layerThickness: number("layerThickness"),
		base: number("printBase")
	}).optional().describe("How sleeves are printed; layers of 0.06 mm and no base when left out."),
	steps: strictObject({
		overlap: number("step"),
		wall: number("step"),
		gap: number("step")
	}).optional().describe("What sizing rounds to; 1, 0.1 and 0.05 mm when left out."),
	tolerances: array(toleranceSchema).max(40).optional().describe("How the inputs of every joint scatter, one row for each input.")
});
// src/shared/project.ts
/**
* The project file: one JSON document, inputs only, N, mm, MPa, °C. Unknown keys, non-finite
* numbers and numbers outside their physical range are refused with the place named.
* Checks that need several fields at once are in `project-rules.ts`.
*/
const PROJECT_FORMAT = "lapwright-project";
const caseCommon = {
	id: id$1,
	name: name$1,
	temperature: number("temperature"),
	moisture: moistureSchema,
	everyCondition: boolean().optional().describe("Judged in each of the project's conditions too, not only in its own.")
};
const loadCaseSchema = discriminatedUnion("kind", [
	strictObject({
		...caseCommon,
		kind: literal("limit")
	}),
	strictObject({
		...caseCommon,
		kind: literal("ultimate")
	}),
	strictObject({
		...caseCommon,
		kind: literal("cyclic"),
		cycles: number("cycles")
	})
], { error: "a load case is of kind \"limit\", \"ultimate\" or \"cyclic\"" });
/** Surroundings that load cases can be judged in besides their own. */
const conditionSchema = strictObject({
	id: id$1,
	name: name$1,
	temperature: number("temperature"),
	moisture: moistureSchema
});
const projectShape = strictObject({
	format: literal(PROJECT_FORMAT, { error: `format must be "${PROJECT_FORMAT}": this is not a Lapwright project` }),
	version: literal(1, { error: `version must be 1: this Lapwright reads no other` }),
	name: name$1,
	note: note$1.optional(),
	settings: settingsSchema,
	plies: array(plySchema).max(200).optional(),
	adherends: array(adherendSchema).max(500),
	adhesives: array(adhesiveSchema).max(200),
	conditions: array(conditionSchema).max(20).optional(),
	loadCases: array(loadCaseSchema).max(200),
	joints: array(jointSchema).max(2e3),
	variants: array(strictObject({
		of: id$1.describe("Id of the joint it varies."),
		joint: jointSchema
	})).max(200).optional().describe("Other shapes of a joint, to compare; no part of the frame.")
});
// src/shared/stack-writing.ts
/** The shortest text of a stack among the usual forms: runs, ± pairs, one level of groups, repeats, s. */
/** Length, and a little for each item: [45_2/-45_2], not [45/±45/-45]. */
const cost = (text) => text.length + text.split("/").length;
const shorter = (a, b) => cost(b) < cost(a) ? b : a;
const joined$1 = (head, tail) => tail === "" ? head : `${head}/${tail}`;
/** How many times the `period` angles from `from` stand there in a row, up to `to`. */
function repeats(angles, from, period, to) {
	let end = from + period;
	while (end < to && angles[end] === angles[end - period]) end++;
	return Math.floor((end - from) / period);
}
/** The smallest block whose repeats fill from..to. */
function smallestPeriod(angles, from, to) {
	const n = to - from;
	for (let period = 1; 2 * period <= n; period++) if (n % period === 0 && repeats(angles, from, period, to) === n / period) return period;
	return n;
}
/** The shortest text from i on whose first item is an angle, a run of it, or a ± pair. */
function withAngle(angles, i, to, best) {
	const angle = angles[i];
	const run = repeats(angles, i, 1, to);
	let found = joined$1(String(angle), best[i + 1]);
	if (run > 1) found = shorter(found, joined$1(`${angle}_${run}`, best[i + run]));
	if (angle !== 0 && i + 1 < to && angles[i + 1] === -angle) {
		const pair = `${angle > 0 ? "±" : "∓"}${Math.abs(angle)}`;
		found = shorter(found, joined$1(pair, best[i + 2]));
	}
	return found;
}
/** Angles from..to without groups; `best[i]` is the shortest text from i on. */
function writeFlat(angles, from, to) {
	const best = [];
	best[to] = "";
	for (let i = to - 1; i >= from; i--) best[i] = withAngle(angles, i, to, best);
	return best[from];
}
function writeList(angles) {
	const n = angles.length;
	const best = [];
	best[n] = "";
	for (let i = n - 1; i >= 0; i--) {
		let found = withAngle(angles, i, n, best);
		for (let period = 2; i + 2 * period <= n; period++) {
			const count = repeats(angles, i, period, n);
			if (count < 2 || smallestPeriod(angles, i, i + period) < period) continue;
			const group = `(${writeFlat(angles, i, i + period)})${count}`;
			found = shorter(found, joined$1(group, best[i + period * count]));
		}
		best[i] = found;
	}
	return best[0];
}
/** [block]n */
function writeRepeated(angles) {
	const period = smallestPeriod(angles, 0, angles.length);
	const count = angles.length / period;
	return `[${writeList(angles.slice(0, period))}]${count > 1 ? count : ""}`;
}
/** @param angles at least one, in the terms in which they shall read back */
function writeAngles(angles) {
	const total = writeRepeated(angles);
	const last = angles.length - 1;
	if (!(angles.length % 2 === 0 && angles.every((angle, k) => angle === angles[last - k])) || angles.every((angle) => angle === angles[0])) return total;
	const mirrored = `${writeRepeated(angles.slice(0, angles.length / 2))}s`;
	return mirrored.length <= total.length ? mirrored : total;
}
const DECIMALS = 6;
var Refusal = class extends Error {
	at;
	constructor(at, message) {
		super(message);
		this.at = at;
	}
};
const sub = "₀₁₂₃₄₅₆₇₈₉";
const plain = (figures) => Number([...figures].map((c) => sub.includes(c) ? sub.indexOf(c) : c).join(""));
const SPACE = /\s*/y;
const PAIR$1 = /±|∓|\+\/?[-−–]|[-−–]\/?\+/y;
const ANGLE$1 = /[-−–+]?(\d+(?:\.\d*)?|\.\d+)/y;
const DEGREE = /\s*[°º˚]/y;
const TOTAL = /_?[tTₜ]/y;
const MIRROR = /_?[sSₛ]/y;
/** After an angle a figure needs its underscore: 452 would be an angle. */
const ANGLE_REPEAT = new RegExp(`_(\\d+|[${sub}]+)|([${sub}]+)`, "y");
const GROUP_REPEAT = new RegExp(`_?(\\d+|[${sub}]+)`, "y");
/** Into −90 (excluded) … 90: fibres at 135° lie as at −45°. */
function direction(angle) {
	const turned = angle > 90 ? angle - 180 : angle <= -90 ? angle + 180 : angle;
	return turned === angle ? angle + 0 : Number(turned.toFixed(DECIMALS)) + 0;
}
var Reader = class {
	#text;
	#at = 0;
	#separator;
	constructor(text) {
		this.#text = text;
	}
	#match(pattern) {
		pattern.lastIndex = this.#at;
		const found = pattern.exec(this.#text);
		if (found !== null) this.#at += found[0].length;
		return found;
	}
	get #next() {
		return this.#text[this.#at] ?? "";
	}
	stack() {
		this.#match(SPACE);
		if (this.#next !== "[") throw new Refusal(this.#at, "A stack stands in square brackets, as in [0/±45/90]s.");
		this.#at++;
		const angles = this.#ending(this.#plies("]"));
		this.#match(SPACE);
		if (this.#at < this.#text.length) throw new Refusal(this.#at, `Nothing can follow the stack here but a repeat, s or T: “${this.#next}”.`);
		return angles;
	}
	/** The items up to the closing bracket, and past it. */
	#plies(close) {
		const opened = this.#at - 1;
		const angles = [];
		this.#match(SPACE);
		if (this.#next === close) throw new Refusal(this.#at, "There is no ply between the brackets.");
		for (;;) {
			const at = this.#at;
			const item = this.#item();
			this.#allow(angles.length + item.length, at);
			angles.push(...item);
			if (this.#separate(close)) return angles;
			if (this.#at >= this.#text.length) throw new Refusal(opened, `This bracket is not closed: “${close}” is missing.`);
		}
	}
	/** Past a separator; true when the closing bracket came instead. */
	#separate(close) {
		const before = this.#at;
		this.#match(SPACE);
		if (this.#next === close) {
			this.#at++;
			return true;
		}
		if (this.#at >= this.#text.length) return false;
		const at = this.#at;
		let kind = " ";
		if (this.#next === "/" || this.#next === ",") {
			kind = this.#next;
			this.#at++;
			this.#match(SPACE);
		} else if (at === before) throw new Refusal(at, `An angle, a separator or “${close}” is expected, not “${this.#next}”.`);
		this.#separator ??= kind;
		if (this.#separator !== kind) throw new Refusal(kind === " " ? before : at, "Separate the plies in one way throughout: slashes, or commas, or spaces. Decimals take a point.");
		return false;
	}
	#item() {
		if (this.#next === "(") {
			this.#at++;
			return this.#ending(this.#plies(")"));
		}
		const start = this.#at;
		const pair = this.#match(PAIR$1)?.[0];
		if (pair !== void 0) this.#match(SPACE);
		const at = this.#at;
		const angle = this.#angle();
		if (pair !== void 0 && !/[\d.]/.test(this.#text[at] ?? "")) throw new Refusal(at, "An angle after ± has no sign of its own.");
		this.#match(DEGREE);
		const repeatAt = this.#at;
		const repeat = this.#match(ANGLE_REPEAT);
		if (repeat !== null && pair !== void 0) throw new Refusal(start, "A repeat after ± reads two ways: write (±45)2 for 45/-45/45/-45, or 45_2/-45_2.");
		const both = pair === void 0 ? [angle] : [angle, -angle];
		if (pair !== void 0 && /^[-−–∓]/.test(pair)) both.reverse();
		const count = repeat === null ? 1 : this.#count(repeat[1] ?? repeat[2], repeatAt);
		this.#allow(both.length * count, repeatAt);
		return Array.from({ length: count }, () => both.map(direction)).flat();
	}
	#angle() {
		const at = this.#at;
		const found = this.#match(ANGLE$1);
		if (found === null) {
			const next = this.#next;
			throw new Refusal(at, next === "" ? "The stack ends where an angle is expected." : `An angle is expected, not “${next}”.`);
		}
		const size = Number(found[1]);
		if (size > 180) throw new Refusal(at, "An angle lies between -180° and 180°.");
		if ((found[1].split(".")[1] ?? "").length > DECIMALS) throw new Refusal(at, `An angle has at most ${DECIMALS} decimals.`);
		return /^[-−–]/.test(found[0]) ? -size : size;
	}
	/** Repeats and mirrors what stood in the brackets. */
	#ending(angles) {
		const at = this.#at;
		const repeat = this.#match(GROUP_REPEAT);
		const count = repeat === null ? 1 : this.#count(repeat[1], at);
		this.#allow(angles.length * count, at);
		const repeated = Array.from({ length: count }, () => angles).flat();
		if (this.#match(MIRROR) === null) {
			this.#match(TOTAL);
			return repeated;
		}
		this.#allow(2 * repeated.length, at);
		if (/[\d₀-₉]/.test(this.#next)) throw new Refusal(this.#at, "The number comes before the s: [0/90]2s.");
		return [...repeated, ...repeated.reverse()];
	}
	#count(figures, at) {
		const count = plain(figures);
		if (count < 1) throw new Refusal(at, "A repeat is at least 1.");
		this.#allow(count, at);
		return count;
	}
	#allow(plies, at) {
		if (plies > 400) throw new Refusal(at, `A stack has at most 400 plies; this makes more.`);
	}
};
function readStack(text) {
	try {
		const angles = new Reader(text).stack();
		return {
			ok: true,
			angles,
			canonical: writeStack(angles)
		};
	} catch (error) {
		if (error instanceof Refusal) return {
			ok: false,
			message: error.message,
			at: error.at
		};
		throw error;
	}
}
/** The shortest usual form; reads back to the same directions. */
const writeStack = (angles) => writeAngles(angles.map((angle) => Number(direction(angle).toFixed(DECIMALS)) + 0));
// src/shared/project-rules.ts
function repeatedIds(list, where) {
	const seen = /* @__PURE__ */ new Set();
	for (const [i, { id }] of list.entries()) {
		if (seen.has(id)) return {
			field: `${where}.${i}.id`,
			message: `the id "${id}" is used twice: choose another`
		};
		seen.add(id);
	}
	return null;
}
/** Every place in a joint that names an adherend, with the name. */
function adherendReferences(joint) {
	switch (joint.type) {
		case "sleeve-single": return [["tube.adherend", joint.tube.adherend], ["sleeve.adherend", joint.sleeve.adherend]];
		case "sleeve-double": return [
			["tube.adherend", joint.tube.adherend],
			["spigot.adherend", joint.spigot.adherend],
			["socket.adherend", joint.socket.adherend]
		];
		case "flat-single": return [["strip.adherend", joint.strip.adherend], ["plate.adherend", joint.plate.adherend]];
		case "flat-double": return [
			["strip.adherend", joint.strip.adherend],
			["lowerStrap.adherend", joint.lowerStrap.adherend],
			["upperStrap.adherend", joint.upperStrap.adherend]
		];
	}
}
function brokenJoint(project, joint, where) {
	for (const [field, id] of adherendReferences(joint)) if (!project.adherends.some((adherend) => adherend.id === id)) return {
		field: `${where}.${field}`,
		message: `there is no adherend with the id "${id}"`
	};
	const adhesive = project.adhesives.find(({ id }) => id === joint.adhesive);
	if (!adhesive) return {
		field: `${where}.adhesive`,
		message: `there is no adhesive with the id "${joint.adhesive}"`
	};
	const seen = /* @__PURE__ */ new Set();
	for (const [i, load] of joint.loads.entries()) {
		const field = `${where}.loads.${i}.case`;
		const loadCase = project.loadCases.find(({ id }) => id === load.case);
		if (!loadCase) return {
			field,
			message: `there is no load case with the id "${load.case}"`
		};
		if (seen.has(load.case)) return {
			field,
			message: `the load case "${load.case}" stands twice in this joint`
		};
		seen.add(load.case);
		const without = [{
			what: "load case",
			...loadCase
		}, ...(loadCase.everyCondition ? project.conditions ?? [] : []).map((condition) => ({
			what: "condition",
			...condition
		}))].find(({ moisture }) => !adhesive.states.some((state) => state.moisture === moisture));
		if (without) {
			const { what, name, moisture } = without;
			return {
				field: `${where}.adhesive`,
				message: `the ${what} "${name}" is ${moisture}, but the adhesive "${adhesive.name}" has no ${moisture} properties: add a ${moisture} state to it or choose another adhesive`
			};
		}
	}
	return brokenSizes(project, joint, where);
}
function brokenSizes(project, { sizes }, where) {
	const repeated = repeatedIds(sizes ?? [], `${where}.sizes`);
	if (repeated) return repeated;
	for (const [i, { loads }] of (sizes ?? []).entries()) {
		const seen = /* @__PURE__ */ new Set();
		for (const [k, load] of (loads ?? []).entries()) {
			const field = `${where}.sizes.${i}.loads.${k}.case`;
			if (!project.loadCases.some(({ id }) => id === load.case)) return {
				field,
				message: `there is no load case with the id "${load.case}"`
			};
			if (seen.has(load.case)) return {
				field,
				message: `the load case "${load.case}" stands twice in this size`
			};
			seen.add(load.case);
		}
	}
	return null;
}
function brokenVariants(project) {
	const seen = new Set(project.joints.map(({ id }) => id));
	for (const [i, { of, joint }] of (project.variants ?? []).entries()) {
		const where = `variants.${i}`;
		if (!project.joints.some(({ id }) => id === of)) return {
			field: `${where}.of`,
			message: `there is no joint with the id "${of}"`
		};
		if (seen.has(joint.id)) return {
			field: `${where}.joint.id`,
			message: `the id "${joint.id}" is used twice: choose another`
		};
		seen.add(joint.id);
		const broken = brokenJoint(project, joint, `${where}.joint`);
		if (broken) return broken;
	}
	return null;
}
function brokenTolerances({ settings }) {
	const seen = /* @__PURE__ */ new Set();
	for (const [i, { input }] of (settings.tolerances ?? []).entries()) {
		if (seen.has(input)) return {
			field: `settings.tolerances.${i}.input`,
			message: `"${input}" stands twice among the tolerances: keep one`
		};
		seen.add(input);
	}
	return null;
}
function brokenLaminate(project, { ply, stack }) {
	if (!project.plies?.some(({ id }) => id === ply)) return {
		field: "ply",
		message: `there is no ply with the id "${ply}"`
	};
	const reading = readStack(stack);
	return reading.ok ? null : {
		field: "stack",
		message: reading.message
	};
}
/** Place of the first entry that stands in the list before, or −1. */
const firstRepeated = (keys) => keys.findIndex((key, i) => keys.indexOf(key) < i);
/** Rows of both tables may stand in any order; two at one place would say two things of it. */
function brokenAdhesive({ name, states, knockdowns }) {
	const state = firstRepeated(states.map(({ temperature, moisture }) => `${temperature} ${moisture}`));
	if (state >= 0) {
		const { temperature, moisture } = states[state];
		return {
			field: `states.${state}.temperature`,
			message: `"${name}" has two ${moisture} states at ${temperature} °C: keep one`
		};
	}
	const rows = knockdowns?.gap ?? [];
	const row = firstRepeated(rows.map(({ gap }) => gap));
	return row < 0 ? null : {
		field: `knockdowns.gap.${row}.gap`,
		message: `"${name}" has two rows of strength at a gap of ${rows[row].gap} mm: keep one`
	};
}
/** The first rule that the project breaks, or null. */
function brokenRule(project) {
	for (const list of [
		"plies",
		"adherends",
		"adhesives",
		"conditions",
		"loadCases",
		"joints"
	]) {
		const repeated = repeatedIds(project[list] ?? [], list);
		if (repeated) return repeated;
	}
	for (const [i, adherend] of project.adherends.entries()) {
		if (adherend.kind === "isotropic" && adherend.ultimateStrength < adherend.yieldStrength) return {
			field: `adherends.${i}.ultimateStrength`,
			message: `the ultimate strength of "${adherend.name}" is below its yield strength`
		};
		if (adherend.kind === "orthotropic") {
			const { poisson, axialModulus, hoopModulus } = adherend;
			if (poisson * poisson * hoopModulus >= axialModulus) return {
				field: `adherends.${i}.poisson`,
				message: `no material can have the Poisson ratio ${poisson} with these moduli: change it so that its square is below axial over hoop modulus`
			};
		}
		const laminate = adherend.kind === "laminate" ? brokenLaminate(project, adherend) : null;
		if (laminate) return {
			...laminate,
			field: `adherends.${i}.${laminate.field}`
		};
	}
	for (const [i, adhesive] of project.adhesives.entries()) {
		const broken = brokenAdhesive(adhesive);
		if (broken) return {
			...broken,
			field: `adhesives.${i}.${broken.field}`
		};
	}
	for (const [i, joint] of project.joints.entries()) {
		const broken = brokenJoint(project, joint, `joints.${i}`);
		if (broken) return broken;
	}
	return brokenVariants(project) ?? brokenTolerances(project);
}
// src/shared/reply.ts
const ok = (value) => ({
	ok: true,
	value
});
const refuse = (code, field, message) => ({
	ok: false,
	error: {
		code,
		field,
		message
	}
});
// src/shared/read-project.ts
/** What stands at a path of a document; undefined when nothing does. */
function valueAt(document, path) {
	let value = document;
	for (const key of path) {
		if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return void 0;
		value = value[key];
	}
	return value;
}
/** The same, shortened for a message; null when it is not worth showing. */
function shown(value) {
	if (typeof value === "number" || typeof value === "boolean") return String(value);
	if (value === null) return "null";
	if (typeof value !== "string") return null;
	return value.length > 40 ? `"${value.slice(0, 40)}…"` : `"${value}"`;
}
const kinds = {
	object: "a group of fields in { }",
	array: "a list in [ ]",
	string: "a text in quotes",
	boolean: "true or false, without quotes",
	number: "a number, without quotes"
};
/** What is wanted in place of what stands there: our own words where the schema has them. */
function wanted(issue) {
	if (!/^(Invalid|Too (big|small)|Unrecognized)/.test(issue.message)) return issue.message.charAt(0).toLowerCase() + issue.message.slice(1);
	switch (issue.code) {
		case "invalid_type": return `this must be ${kinds[issue.expected] ?? issue.expected}`;
		case "invalid_value": return `this must be one of ${issue.values.map((value) => JSON.stringify(value)).join(", ")}`;
		case "too_big": return issue.origin === "array" ? `this list is too long: it may have ${issue.maximum} items` : `this is too long: it may have ${issue.maximum} characters`;
		default: return "this cannot stand here";
	}
}
function explain$1(document, issue) {
	const path = [...issue.path];
	if (issue.code === "unrecognized_keys") {
		const [key = ""] = issue.keys;
		return {
			field: [...path, key].join("."),
			message: `"${key.slice(0, 60)}" is not a field here: remove it or correct its name`
		};
	}
	const value = valueAt(document, path);
	const field = path.join(".");
	if (value === void 0) return {
		field,
		message: `missing: ${wanted(issue)}`
	};
	const found = shown(value);
	return {
		field,
		message: found === null ? wanted(issue) : `${wanted(issue)}; it is ${found}`
	};
}
/** Checks a document that has already been parsed. */
function readProject(document) {
	if (typeof document !== "object" || document === null || Array.isArray(document)) return refuse("bad-input", "", "A project is a JSON object; this is something else.");
	if (document.format !== "lapwright-project") return refuse("bad-input", "format", `This is not a Lapwright project: its "format" is not "${PROJECT_FORMAT}".`);
	const parsed = projectShape.safeParse(document, { reportInput: true });
	if (!parsed.success) {
		const { field, message } = explain$1(document, parsed.error.issues[0]);
		return refuse("bad-input", field, sentence(message));
	}
	const broken = brokenRule(parsed.data);
	if (broken) return refuse("bad-input", broken.field, sentence(broken.message));
	return ok(parsed.data);
}
/** Checks the text of a project file. */
function readProjectText(text) {
	const bare = text.startsWith("﻿") ? text.slice(1) : text;
	if (bare.trim() === "") return refuse("bad-input", "", "The file is empty.");
	let document;
	try {
		document = JSON.parse(bare);
	} catch {
		return refuse("bad-input", "", `The file is not JSON: ${whereInText(bare)}.`);
	}
	return readProject(document);
}
const sentence = (text) => `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.!?]$/.test(text) ? "" : "."}`;
function whereInText(text) {
	const at = jsonErrorAt(text);
	if (at >= text.length) return "it stops in the middle";
	const before = text.slice(0, at).split("\n");
	return `something is wrong at line ${before.length}, column ${before[before.length - 1].length + 1}`;
}
// src/main/demo/curlew.lapwright.json
var curlew_lapwright_default = {
	format: "lapwright-project",
	version: 1,
	name: "Curlew",
	note: "An invented four-boom coastal survey drone: carbon booms in printed titanium hub sleeves. Every property and load here is invented or typical; replace them by your own.",
	settings: {
		"targetMargin": .25,
		"factors": {
			"limit": 1,
			"ultimate": 1.5,
			"fitting": 1.15
		},
		"adherendShear": true
	},
	plies: [{
		"id": "carbon-ply",
		"name": "Carbon-epoxy ply, standard modulus",
		"axialModulus": 13e4,
		"transverseModulus": 9e3,
		"shearModulus": 4800,
		"poisson": .3,
		"transverseShearModulus": 3200,
		"axialExpansion": -3e-7,
		"transverseExpansion": 3e-5,
		"thickness": .1875,
		"tensileStrength": 2e3,
		"compressiveStrength": 1200,
		"transverseTensileStrength": 50,
		"transverseCompressiveStrength": 180,
		"shearStrength": 80,
		"interlaminarTension": 50,
		"interlaminarShear": 75,
		"density": 1550,
		"source": {
			"kind": "typical",
			"text": "Typical, from memory: replace by your coupons."
		}
	}],
	adherends: [
		{
			"id": "carbon-tube",
			"name": "Carbon tube, mostly axial plies",
			"kind": "orthotropic",
			"axialModulus": 7e4,
			"hoopModulus": 3e4,
			"shearModulus": 15e3,
			"poisson": .3,
			"axialExpansion": 1e-6,
			"hoopExpansion": 6e-6,
			"throughShearModulus": 4e3,
			"throughModulus": 9e3,
			"throughExpansion": 3e-5,
			"interlaminarTension": 50,
			"interlaminarShear": 75,
			"tensileStrength": 750,
			"compressiveStrength": 520,
			"shearStrength": 160,
			"density": 1550,
			"source": {
				"kind": "typical",
				"text": "Typical, from memory: replace by your coupons."
			}
		},
		{
			"id": "carbon-strip",
			"name": "Carbon strip, quasi-isotropic",
			"kind": "laminate",
			"ply": "carbon-ply",
			"stack": "[0/±45/90]2s",
			"source": {
				"kind": "typical",
				"text": "Typical, from memory: replace by your coupons."
			}
		},
		{
			"id": "titanium-printed",
			"name": "Titanium 6Al-4V, printed and stress-relieved",
			"kind": "isotropic",
			"modulus": 114e3,
			"poisson": .34,
			"expansion": 86e-7,
			"yieldStrength": 830,
			"ultimateStrength": 900,
			"density": 4430,
			"source": {
				"kind": "typical",
				"text": "Typical, from memory; wrought annealed bar is near it (MIL-HDBK-5J, table 5.4.1.0). Replace by your own print's coupons."
			}
		}
	],
	adhesives: [{
		"id": "toughened-paste",
		"name": "Toughened epoxy paste",
		"stressFreeTemperature": 60,
		"states": [
			{
				"temperature": -40,
				"moisture": "dry",
				"modulus": 3e3,
				"shearModulus": 1100,
				"shearYield": 48,
				"plasticStrain": .2,
				"peelStrength": 60
			},
			{
				"temperature": 23,
				"moisture": "dry",
				"modulus": 2400,
				"shearModulus": 876,
				"shearYield": 38,
				"plasticStrain": .4,
				"peelStrength": 50
			},
			{
				"temperature": 60,
				"moisture": "dry",
				"modulus": 1700,
				"shearModulus": 620,
				"shearYield": 27,
				"plasticStrain": .6,
				"peelStrength": 38
			},
			{
				"temperature": 23,
				"moisture": "wet",
				"modulus": 2100,
				"shearModulus": 760,
				"shearYield": 33,
				"plasticStrain": .45,
				"peelStrength": 42
			},
			{
				"temperature": 60,
				"moisture": "wet",
				"modulus": 1300,
				"shearModulus": 470,
				"shearYield": 20,
				"plasticStrain": .7,
				"peelStrength": 30
			}
		],
		"expansion": 55e-6,
		"fracture": {
			"modeI": 1.2,
			"modeII": 5,
			"exponent": 1,
			"source": {
				"kind": "typical",
				"text": "Typical, from memory: replace by your coupons."
			}
		},
		"knockdowns": {
			"environment": 1,
			"ageing": .95,
			"scatter": .95,
			"gap": [
				{
					"gap": .1,
					"factor": 1
				},
				{
					"gap": .3,
					"factor": 1
				},
				{
					"gap": .5,
					"factor": .85
				}
			],
			"source": {
				"kind": "typical",
				"text": "Typical, from memory: replace by your coupons."
			}
		},
		"fatigue": {
			"coefficient": 1.71,
			"exponent": .12,
			"source": {
				"kind": "published",
				"text": "Epoxy-polyamide single laps: J. Soc. Mater. Sci. Japan 34 (386), 1985, abstract. Another adhesive: replace by your coupons."
			}
		},
		"density": 1180,
		"source": {
			"kind": "typical",
			"text": "Typical, from memory: replace by your coupons."
		}
	}],
	conditions: [{
		"id": "cold-soak",
		"name": "Cold soak",
		"temperature": -20,
		"moisture": "dry"
	}, {
		"id": "hot-deck",
		"name": "Hot deck, wet",
		"temperature": 60,
		"moisture": "wet"
	}],
	loadCases: [
		{
			"id": "gust",
			"name": "Gust",
			"kind": "limit",
			"temperature": 20,
			"moisture": "dry"
		},
		{
			"id": "gust-cold",
			"name": "Gust, cold soak",
			"kind": "limit",
			"temperature": -20,
			"moisture": "dry"
		},
		{
			"id": "gust-hot",
			"name": "Gust, hot deck",
			"kind": "limit",
			"temperature": 60,
			"moisture": "wet"
		},
		{
			"id": "hard-landing",
			"name": "Hard landing",
			"kind": "ultimate",
			"temperature": 60,
			"moisture": "wet",
			"everyCondition": true
		},
		{
			"id": "rotor",
			"name": "Rotor vibration",
			"kind": "cyclic",
			"temperature": 60,
			"moisture": "wet",
			"cycles": 1e7
		}
	],
	joints: [
		{
			"id": "boom-root",
			"name": "Boom root",
			"type": "sleeve-double",
			"overlap": 45,
			"adhesive": "toughened-paste",
			"tube": {
				"adherend": "carbon-tube",
				"outsideDiameter": 40,
				"wall": 2
			},
			"spigot": {
				"adherend": "titanium-printed",
				"atRoot": 1.2,
				"atMouth": 1.2
			},
			"socket": {
				"adherend": "titanium-printed",
				"atRoot": 1.2,
				"atMouth": 1.2
			},
			"innerBond": {
				"gap": .2,
				"tolerance": .05
			},
			"outerBond": {
				"gap": .2,
				"tolerance": .05
			},
			"offset": .03,
			"loads": [
				{
					"case": "gust",
					"force": 1e3,
					"moment": 165e3,
					"torque": 35e3,
					"shear": 400
				},
				{
					"case": "gust-cold",
					"force": 1e3,
					"moment": 165e3,
					"torque": 35e3,
					"shear": 400
				},
				{
					"case": "gust-hot",
					"force": 900,
					"moment": 12e4,
					"torque": 25e3,
					"shear": 300
				},
				{
					"case": "hard-landing",
					"force": -500,
					"moment": 25e4,
					"torque": 2e4,
					"shear": 650
				}
			]
		},
		{
			"id": "boom-tip",
			"name": "Boom tip to motor mount",
			"type": "sleeve-single",
			"side": "socket",
			"overlap": 35,
			"adhesive": "toughened-paste",
			"tube": {
				"adherend": "carbon-tube",
				"outsideDiameter": 32,
				"wall": 1.6
			},
			"sleeve": {
				"adherend": "titanium-printed",
				"atRoot": 1.2,
				"atMouth": 1.2
			},
			"bond": {
				"gap": .2,
				"tolerance": .05
			},
			"offset": .03,
			"loads": [
				{
					"case": "gust",
					"force": 900,
					"moment": 3e4,
					"torque": 12e3,
					"shear": 200
				},
				{
					"case": "gust-cold",
					"force": 900,
					"moment": 3e4,
					"torque": 12e3,
					"shear": 200
				},
				{
					"case": "rotor",
					"force": 300,
					"moment": 19e3,
					"torque": 7500,
					"shear": 150
				}
			]
		},
		{
			"id": "landing-leg",
			"name": "Landing leg",
			"type": "sleeve-single",
			"side": "spigot",
			"overlap": 14,
			"adhesive": "toughened-paste",
			"tube": {
				"adherend": "carbon-tube",
				"outsideDiameter": 25,
				"wall": 1.5
			},
			"sleeve": {
				"adherend": "titanium-printed",
				"atRoot": 1.5,
				"atMouth": 1.5
			},
			"bond": {
				"gap": .2,
				"tolerance": .05
			},
			"offset": .03,
			"loads": [{
				"case": "gust-cold",
				"force": -1500,
				"moment": 12e3,
				"torque": 0,
				"shear": 80
			}, {
				"case": "hard-landing",
				"force": -9e3,
				"moment": 6e4,
				"torque": 0,
				"shear": 400
			}]
		},
		{
			"id": "tail-strut",
			"name": "Tail strut lug",
			"type": "flat-double",
			"overlap": 40,
			"adhesive": "toughened-paste",
			"width": 25,
			"strip": {
				"adherend": "carbon-strip",
				"thickness": 3
			},
			"lowerStrap": {
				"adherend": "titanium-printed",
				"atRoot": 1.2,
				"atMouth": 1.2
			},
			"upperStrap": {
				"adherend": "titanium-printed",
				"atRoot": 1.2,
				"atMouth": 1.2
			},
			"lowerBond": {
				"gap": .2,
				"tolerance": .05
			},
			"upperBond": {
				"gap": .2,
				"tolerance": .05
			},
			"loads": [
				{
					"case": "gust",
					"force": 5e3
				},
				{
					"case": "gust-cold",
					"force": 5e3
				},
				{
					"case": "gust-hot",
					"force": 4e3
				}
			]
		}
	]
};
// src/main/demo/demo.ts
/** The demonstration project: invented, ships with the app, opens on first start. */
function openDemo() {
	const project = readProject(curlew_lapwright_default);
	return project.ok ? ok({
		document: project.value,
		origin: "Curlew (demonstration)"
	}) : project;
}
// package.json
var version = "0.1.0";
// src/shared/contract.ts
/**
* The contract, once. Every request that a page, a terminal or a test can make, with the schema of
* what it sends. The Electron bridge, the loopback route and the command line all derive from it.
*/
const jointId = string().max(64);
const caseId = string().max(64);
const gapState = _enum([
	"min",
	"nominal",
	"max",
	"thin-side",
	"thick-side"
]);
/** Checked by `readProject`, not here: its errors name the place in the document. */
const document$1 = unknown$2();
/** Which state of a joint to draw. What is left out is chosen: the governing one. */
const focus = strictObject({
	caseId: caseId.optional(),
	/** Condition that the case is judged in; null for its own surroundings. */
	conditionId: string().max(64).nullable().optional(),
	gapState: gapState.optional(),
	theta: number$1().min(-360).max(360).optional(),
	loadFactor: number$1().min(0).max(100).optional(),
	stations: int().min(2).max(2e3).optional(),
	/** Also the stresses around the bond, at this many clockings. */
	map: int().min(4).max(360).optional()
});
/** Figures other than margins that can show their working. */
const figures = [
	"peak-shear",
	"peak-peel",
	"bond-strength",
	"plateau",
	"edge-moment"
];
const job = string().min(1).max(64);
/** Input of a long request: an id that the caller chooses, by which to follow and to stop it. */
const long = (shape) => strictObject({
	...shape,
	job: job.optional()
});
/** Answered within a frame or two, by the thread that is asked. */
const quickRequests = {
	"app.about": strictObject({}),
	"project.initial": strictObject({}),
	"project.demo": strictObject({}),
	"project.read": strictObject({
		text: string(),
		origin: string().max(300)
	}),
	"project.schema": strictObject({}),
	"joint.analyse": strictObject({
		document: document$1,
		jointId,
		focus
	}),
	"joint.stress": strictObject({
		document: document$1,
		jointId,
		focus
	}),
	/** At the temperature and moisture of one load case, or of all that the joint carries. */
	"joint.springs": strictObject({
		document: document$1,
		jointId,
		caseId: caseId.optional()
	}),
	"laminate.describe": strictObject({
		document: document$1,
		adherendId: string().max(64),
		/** Wall that the plies make, mm; their own thickness when left out. */
		wall: number$1().min(.05).max(100).optional(),
		/** A strip has a lower and an upper face where a tube has an inside and an outside. */
		flat: boolean().optional()
	})
};
/** About a long request on its way; answered at once, also while it waits. */
const jobRequests = {
	"job.progress": strictObject({ job }),
	"job.stop": strictObject({ job })
};
/** These run in a worker thread: they tell how far they are, and can be stopped. */
const longRequests = {
	"project.check": long({ document: document$1 }),
	/** With a joint: that one alone, and every corner of it. */
	"project.corners": long({
		document: document$1,
		jointId: jointId.optional()
	}),
	"joint.explain": long({
		document: document$1,
		jointId,
		/** A mode of the margin list, or one of `figures`. */
		subject: string().max(40),
		/** Bond or wall, where the subject has several. */
		part: string().max(40).optional(),
		place: _enum([
			"root",
			"mouth",
			"within"
		]).optional(),
		focus
	}),
	"joint.sweep": long({
		document: document$1,
		jointId,
		from: number$1().min(1).max(500).optional(),
		to: number$1().min(1).max(500).optional(),
		points: int().min(2).max(500).optional()
	}),
	/** The joint with the other lap, made equal to it in one thing. */
	"joint.variant": long({
		document: document$1,
		jointId,
		lap: _enum(["single", "double"]),
		equal: _enum([
			"overlap",
			"mass",
			"margin"
		])
	}),
	"project.compare": long({
		document: document$1,
		columns: array(union([strictObject({ joint: jointId }), strictObject({ variant: jointId })])).min(2).max(4),
		/** The case that stress and strength are compared in; chosen when left out. */
		caseId: caseId.optional()
	})
};
const requests = {
	...quickRequests,
	...jobRequests,
	...longRequests
};
Object.keys(requests);
const isRequestName = (value) => typeof value === "string" && Object.hasOwn(requests, value);
Object.keys(longRequests);
const isLongRequest = (name) => typeof name === "string" && Object.hasOwn(longRequests, name);
// src/main/jobs/progress.ts
/** Nobody looks on: for a handler that is called directly. */
const unwatched = { progress: () => void 0 };
// src/model/margins/asked.ts
/** Modes that the layered shells find in the bonds. */
const PEEL_MODES = /* @__PURE__ */ new Set([
	"adhesive-peel",
	"peel-shear",
	"interlaminar",
	"fracture"
]);
/** Modes of the walls; all others are of the bonds. */
const WALL_MODES = /* @__PURE__ */ new Set([
	"metal-yield",
	"metal-ultimate",
	"laminate-strength",
	"first-ply"
]);
/** Modes that end the joint; the others limit its service. */
const FAILURE_MODES = /* @__PURE__ */ new Set([
	"adhesive-strain",
	"adhesive-peel",
	"interlaminar",
	"first-ply",
	"fracture",
	"metal-ultimate",
	"laminate-strength"
]);
/** @returns null when the mode is not asked of this kind of case */
function askedFactor(mode, kind, factors) {
	if (FAILURE_MODES.has(mode)) return (kind === "ultimate" ? 1 : factors.ultimate) * factors.fitting;
	if (kind === "ultimate") return null;
	if (mode === "cyclic-shear" && kind !== "cyclic") return null;
	return factors.limit * factors.fitting;
}
// src/model/lap/problem.ts
/** Slip at which the bond yields, mm. */
const slipAtYield = (bond) => bond.shearYield / bond.stiffness;
const isTapered = (channel) => channel.outers.some((outer) => outer.taper !== void 0);
/** Stiffness of a member and its slope at x: a parabola through root, middle and mouth. */
function stiffnessAt(member, x, length) {
	if (member.taper === void 0) return [member.stiffness, 0];
	const { middle, mouth } = member.taper;
	const t = x / length;
	const square = 2 * (member.stiffness + mouth - 2 * middle);
	const linear = mouth - member.stiffness - square;
	return [member.stiffness + t * (linear + t * square), (linear + 2 * t * square) / length];
}
/** Δε of bond j: how much more the tube expands than its outer adherend. */
const thermalMismatch = (channel, j) => channel.tube.thermalStrain - channel.outers[j].thermalStrain;
/** The same problem with the mechanical loads multiplied and, if asked, the temperature removed. */
function scaleLoads(problem, factor) {
	return {
		...problem,
		channels: problem.channels.map((channel) => ({
			...channel,
			load: channel.load * factor
		}))
	};
}
// src/model/numerics/root.ts
/**
* Root of a continuous function between two points where its sign differs.
*
* Source: R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4: inverse
* quadratic interpolation, guarded by bisection, so that it never leaves the bracket.
*
* @param f continuous; f(a) and f(b) must not have the same strict sign
* @returns x with |x − root| ≤ 4·eps·|x| + tolerance, or the bracket's end where f is already zero
* @throws RangeError when the bracket does not hold a sign change or f is not finite
*/
function findRoot(f, a, b, tolerance = 0) {
	let fa = f(a);
	let fb = f(b);
	if (fa === 0) return a;
	if (fb === 0) return b;
	if (!(fa * fb < 0)) throw new RangeError(`no sign change between ${a} (${fa}) and ${b} (${fb})`);
	let c = a;
	let fc = fa;
	let step = b - a;
	let previous = step;
	for (let i = 0; i < 200; i++) {
		if (fb * fc > 0) {
			c = a;
			fc = fa;
			step = b - a;
			previous = step;
		}
		if (Math.abs(fc) < Math.abs(fb)) {
			a = b;
			b = c;
			c = a;
			fa = fb;
			fb = fc;
			fc = fa;
		}
		const near = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
		const half = (c - b) / 2;
		if (Math.abs(half) <= near || fb === 0) return b;
		if (Math.abs(previous) >= near && Math.abs(fa) > Math.abs(fb)) {
			const ratio = fb / fa;
			let p;
			let q;
			if (a === c) {
				p = 2 * half * ratio;
				q = 1 - ratio;
			} else {
				const r = fa / fc;
				const s = fb / fc;
				p = ratio * (2 * half * r * (r - s) - (b - a) * (s - 1));
				q = (r - 1) * (s - 1) * (ratio - 1);
			}
			if (p > 0) q = -q;
			p = Math.abs(p);
			if (2 * p < Math.min(3 * half * q - Math.abs(near * q), Math.abs(previous * q))) {
				previous = step;
				step = p / q;
			} else {
				step = half;
				previous = half;
			}
		} else {
			step = half;
			previous = half;
		}
		a = b;
		fa = fb;
		b += Math.abs(step) > near ? step : half > 0 ? near : -near;
		fb = f(b);
		if (!Number.isFinite(fb)) throw new RangeError(`the function is not finite at ${b}`);
	}
	return b;
}
/** Point of [a, b] where f is least, by golden section; f is taken to have one minimum there. */
function findMinimum(f, a, b, tolerance) {
	const golden = (Math.sqrt(5) - 1) / 2;
	let left = b - golden * (b - a);
	let right = a + golden * (b - a);
	let fl = f(left);
	let fr = f(right);
	while (Math.abs(b - a) > tolerance) if (fl < fr) {
		b = right;
		right = left;
		fr = fl;
		left = b - golden * (b - a);
		fl = f(left);
	} else {
		a = left;
		left = right;
		fl = fr;
		right = a + golden * (b - a);
		fr = f(right);
	}
	return (a + b) / 2;
}
// src/model/chain/law.ts
const makeTraction = () => ({
	stress: [0, 0],
	tangent: [
		0,
		0,
		0
	],
	size: 0,
	direction: [0, 0]
});
/**
* @param regime forces the branch inside a cell whose state is known, `either` decides by |s|
*/
function evaluateLaw(stiffness, shearYield, s0, s1, regime, out) {
	const size = s1 === 0 ? Math.abs(s0) : Math.hypot(s0, s1);
	out.size = size;
	out.direction[0] = size > 0 ? s0 / size : 1;
	out.direction[1] = size > 0 ? s1 / size : 0;
	if (!(regime === "plastic" || regime === "either" && stiffness * size > shearYield) || size === 0) {
		out.stress[0] = stiffness * s0;
		out.stress[1] = stiffness * s1;
		out.tangent[0] = stiffness;
		out.tangent[1] = 0;
		out.tangent[2] = stiffness;
		return;
	}
	const [n0, n1] = out.direction;
	out.stress[0] = shearYield * n0;
	out.stress[1] = shearYield * n1;
	const across = shearYield / size;
	out.tangent[0] = across * n1 * n1;
	out.tangent[1] = -across * n0 * n1;
	out.tangent[2] = across * n0 * n0;
}
/**
* Derivative of (tangent · v) with respect to the slip, for the plastic branch, into `out`:
* ∂/∂s0 and ∂/∂s1 of component 0, then of component 1.
*
*   d(T·v) = −τp/|s|²·[ (n·ds)·w + m·(n·v) + n·(m·v) ],  w = v − n(n·v),  m = ds − n(n·ds)
*/
function tangentGradient(shearYield, traction, v0, v1, out) {
	const { size, direction } = traction;
	const n0 = direction[0];
	const n1 = direction[1];
	const along = n0 * v0 + n1 * v1;
	const w0 = v0 - n0 * along;
	const w1 = v1 - n1 * along;
	const scale = -shearYield / (size * size);
	const cross = -n0 * n1;
	const m00 = 1 - n0 * n0;
	const m11 = 1 - n1 * n1;
	const turn0 = m00 * v0 + cross * v1;
	const turn1 = cross * v0 + m11 * v1;
	out[0] = scale * (n0 * w0 + m00 * along + n0 * turn0);
	out[1] = scale * (n1 * w0 + cross * along + n0 * turn1);
	out[2] = scale * (n0 * w1 + cross * along + n1 * turn0);
	out[3] = scale * (n1 * w1 + m11 * along + n1 * turn1);
}
// src/model/chain/equations.ts
/**
* The equations of one node of the chain: the slip s and the outer force N of every bond and
* channel, and the load factor λ, which is carried along as a constant unknown so that a slip can
* be prescribed instead of a load.
*
*   s′ = a(N_t/K_t − N/K) + Δε,   N′ = −a·c·τ(s),   N_t = λP − ΣN
*   s″ = a(N_t′/K_t − N′/K + N·K′/K²),   N″ = −a·c·(∂τ/∂s)·s′
*/
const layoutOf = (problem) => {
	const channels = problem.channels.length;
	const bonds = problem.bonds.length;
	return {
		channels,
		bonds,
		unknowns: 2 * channels * bonds + 1
	};
};
const makeRates = (unknowns) => ({
	first: new Float64Array(unknowns),
	second: new Float64Array(unknowns),
	firstBy: new Float64Array(unknowns * unknowns),
	secondBy: new Float64Array(unknowns * unknowns)
});
/** The rates alone, without derivatives: what interpolation needs. */
function makeFirstRates(problem) {
	const { channels, bonds, unknowns: m } = layoutOf(problem);
	const traction = makeTraction();
	return (x, y, offset, regimes, out) => {
		out[m - 1] = 0;
		for (let q = 0; q < channels; q++) {
			const channel = problem.channels[q];
			let tubeForce = y[offset + m - 1] * channel.load;
			for (let j = 0; j < bonds; j++) tubeForce -= y[offset + 2 * (q * bonds + j) + 1];
			for (let j = 0; j < bonds; j++) {
				const u = 2 * (q * bonds + j);
				const [stiffness] = stiffnessAt(channel.outers[j], x, problem.length);
				out[u] = channel.levers[j] * (tubeForce / channel.tube.stiffness - y[offset + u + 1] / stiffness) + thermalMismatch(channel, j);
			}
		}
		for (let j = 0; j < bonds; j++) {
			const bond = problem.bonds[j];
			const s1 = channels > 1 ? y[offset + 2 * (bonds + j)] : 0;
			evaluateLaw(bond.stiffness, bond.shearYield, y[offset + 2 * j], s1, regimes[j], traction);
			for (let q = 0; q < channels; q++) out[2 * (q * bonds + j) + 1] = -problem.channels[q].levers[j] * bond.width * traction.stress[q];
		}
	};
}
/** Evaluator of the rates for one problem; `yieldScale` multiplies every bond's yield stress. */
function makeRatesAt(problem, yieldScale) {
	const { channels, bonds, unknowns: m } = layoutOf(problem);
	const lambda = m - 1;
	const traction = problem.bonds.map(() => makeTraction());
	const gradient = /* @__PURE__ */ new Float64Array(4);
	const slips = problem.channels.map((channel) => problem.bonds.map((bond, j) => ({
		lever: channel.levers[j],
		transfer: channel.levers[j] * bond.width,
		mismatch: thermalMismatch(channel, j),
		outer: channel.outers[j]
	})));
	return (x, y, offset, regimes, out) => {
		const { first, second, firstBy, secondBy } = out;
		firstBy.fill(0);
		secondBy.fill(0);
		first[lambda] = 0;
		second[lambda] = 0;
		for (let j = 0; j < bonds; j++) {
			const bond = problem.bonds[j];
			const s1 = channels > 1 ? y[offset + 2 * (bonds + j)] : 0;
			evaluateLaw(bond.stiffness, bond.shearYield * yieldScale, y[offset + 2 * j], s1, regimes[j], traction[j]);
		}
		for (let q = 0; q < channels; q++) {
			const channel = problem.channels[q];
			const flexTube = 1 / channel.tube.stiffness;
			let tubeForce = y[offset + lambda] * channel.load;
			let tubeRate = 0;
			for (let j = 0; j < bonds; j++) {
				const { transfer } = slips[q][j];
				tubeForce -= y[offset + 2 * (q * bonds + j) + 1];
				tubeRate += transfer * traction[j].stress[q];
			}
			for (let j = 0; j < bonds; j++) {
				const u = 2 * (q * bonds + j);
				const { lever, transfer, mismatch, outer } = slips[q][j];
				const [stiffness, rise] = stiffnessAt(outer, x, problem.length);
				const flex = 1 / stiffness;
				const force = y[offset + u + 1];
				const stress = traction[j].stress[q];
				first[u] = lever * (tubeForce * flexTube - force * flex) + mismatch;
				first[u + 1] = -transfer * stress;
				const flexRate = rise * flex * flex;
				second[u] = lever * (tubeRate * flexTube + transfer * stress * flex + force * flexRate);
				firstBy[u * m + lambda] = lever * channel.load * flexTube;
				for (let i = 0; i < bonds; i++) {
					const v = 2 * (q * bonds + i);
					const own = i === j ? 1 : 0;
					firstBy[u * m + v + 1] = -lever * (flexTube + own * flex);
					secondBy[u * m + v + 1] = own * lever * flexRate;
					const share = lever * slips[q][i].transfer * (flexTube + own * flex);
					for (let p = 0; p < channels; p++) {
						const tangent = traction[i].tangent[q + p];
						secondBy[u * m + 2 * (p * bonds + i)] = share * tangent;
					}
				}
				for (let p = 0; p < channels; p++) firstBy[(u + 1) * m + 2 * (p * bonds + j)] = -transfer * traction[j].tangent[q + p];
			}
		}
		for (let j = 0; j < bonds; j++) {
			const regime = regimes[j];
			for (let q = 0; q < channels; q++) {
				const u = 2 * (q * bonds + j);
				if (regime === "either") {
					second[u + 1] = 0;
					continue;
				}
				const { transfer } = slips[q][j];
				let sum = 0;
				for (let p = 0; p < channels; p++) {
					const v = 2 * (p * bonds + j);
					const tangent = traction[j].tangent[q + p];
					sum += tangent * first[v];
					for (let col = 0; col < m; col++) secondBy[(u + 1) * m + col] -= transfer * tangent * firstBy[v * m + col];
				}
				second[u + 1] = -transfer * sum;
				if (regime === "plastic" && channels > 1 && traction[j].size > 0) {
					const v0 = 2 * j;
					const v1 = 2 * (bonds + j);
					const yieldStress = problem.bonds[j].shearYield * yieldScale;
					const g = gradient;
					tangentGradient(yieldStress, traction[j], first[v0], first[v1], g);
					secondBy[(u + 1) * m + v0] -= transfer * g[2 * q];
					secondBy[(u + 1) * m + v1] -= transfer * g[2 * q + 1];
				}
			}
		}
	};
}
// src/model/chain/interpolate.ts
/** Index of the cell that holds x. */
function cellAt(nodes, x) {
	let low = 0;
	let high = nodes.length - 2;
	while (low < high) {
		const middle = low + high + 1 >> 1;
		if (nodes[middle] <= x) low = middle;
		else high = middle - 1;
	}
	return low;
}
/**
* @returns function writing all unknowns at x into `out`
*/
function interpolator(problem, chain) {
	const { unknowns: m } = layoutOf(problem);
	const ratesAt = makeFirstRates(problem);
	const rates0 = new Float64Array(m);
	const rates1 = new Float64Array(m);
	let cached = -1;
	return (x, out) => {
		const { nodes, values, regimes } = chain;
		const i = cellAt(nodes, x);
		if (i !== cached) {
			ratesAt(nodes[i], values, i * m, regimes[i], rates0);
			ratesAt(nodes[i + 1], values, (i + 1) * m, regimes[i], rates1);
			cached = i;
		}
		const h = nodes[i + 1] - nodes[i];
		const t = Math.min(Math.max((x - nodes[i]) / h, 0), 1);
		const t2 = t * t;
		const t3 = t2 * t;
		const h00 = 2 * t3 - 3 * t2 + 1;
		const h10 = t3 - 2 * t2 + t;
		const h01 = 3 * t2 - 2 * t3;
		const h11 = t3 - t2;
		for (let r = 0; r < m; r++) out[r] = h00 * values[i * m + r] + h10 * h * rates0[r] + h01 * values[(i + 1) * m + r] + h11 * h * rates1[r];
	};
}
// src/model/chain/fronts.ts
/** Where each bond passes from elastic to plastic, and which cells lie on which side. */
/** Size of the slip of bond j at node i over the slip at yield. */
function slipRatio(problem, chain, j, i) {
	const { bonds, channels, unknowns } = layoutOf(problem);
	const at = i * unknowns;
	const s0 = chain.values[at + 2 * j];
	const s1 = channels > 1 ? chain.values[at + 2 * (bonds + j)] : 0;
	return Math.hypot(s0, s1) / slipAtYield(problem.bonds[j]);
}
/**
* Rising positions, for each bond, where |s| passes the slip at yield: on the cubic through the slips
* and slip rates at both ends of the cell, so that a front is known better than the cell is fine.
*/
function findFronts(problem, chain) {
	const { bonds, channels, unknowns } = layoutOf(problem);
	const at = interpolator(problem, chain);
	const out = new Float64Array(unknowns);
	return problem.bonds.map((bond, j) => {
		const atYield = slipAtYield(bond);
		const excess = (x) => {
			at(x, out);
			return Math.hypot(out[2 * j], channels > 1 ? out[2 * (bonds + j)] : 0) / atYield - 1;
		};
		const fronts = [];
		for (let i = 1; i < chain.nodes.length; i++) {
			const a = slipRatio(problem, chain, j, i - 1) - 1;
			const b = slipRatio(problem, chain, j, i) - 1;
			if (a > 0 === b > 0) continue;
			const x0 = chain.nodes[i - 1];
			const x1 = chain.nodes[i];
			const inner = excess(x0) * excess(x1) < 0;
			fronts.push(inner ? findRoot(excess, x0, x1, 1e-9 * problem.length) : Math.abs(a) < Math.abs(b) ? x0 : x1);
		}
		return fronts;
	});
}
/** True where bond j is plastic at the overlap's root end. */
const plasticAtRoot = (problem, chain, j) => slipRatio(problem, chain, j, 0) > 1;
/** Breakpoints of the mesh: ends and fronts, those closer than `least` merged. */
function breakpointsOf(fronts, length, least) {
	const points = [0];
	for (const x of fronts.flat().sort((a, b) => a - b)) if (x - points[points.length - 1] > least && length - x > least) points.push(x);
	points.push(length);
	return points;
}
/** Each cell's branch for each bond, by the cell's middle against the fronts. */
function regimesOf(nodes, fronts, startsPlastic) {
	const regimes = [];
	const passed = fronts.map(() => 0);
	let current = null;
	for (let i = 1; i < nodes.length; i++) {
		const middle = (nodes[i - 1] + nodes[i]) / 2;
		for (let j = 0; j < fronts.length; j++) while (passed[j] < fronts[j].length && fronts[j][passed[j]] < middle) {
			passed[j]++;
			current = null;
		}
		current ??= passed.map((count, j) => count % 2 === 0 === startsPlastic[j] ? "plastic" : "elastic");
		regimes.push(current);
	}
	return regimes;
}
// src/model/errors.ts
/**
* The model gives a finite number or throws this: which input to change, and how.
* `input` is a short name such as `overlap`; the caller turns it into a place in its document.
*/
var ModelError = class extends Error {
	input;
	constructor(input, message) {
		super(message);
		this.name = "ModelError";
		this.input = input;
	}
};
// src/model/chain/mesh.ts
/** @param breakpoints rising, from 0 to L */
function gradedMesh(breakpoints, grading) {
	const nodes = [breakpoints[0]];
	for (let i = 1; i < breakpoints.length; i++) {
		const from = breakpoints[i - 1];
		const to = breakpoints[i];
		const half = (to - from) / 2;
		const steps = [];
		let reached = 0;
		while (reached < half && steps.length < 400) {
			const cell = Math.min(grading.first + grading.growth * reached, grading.largest);
			steps.push(cell);
			reached += cell;
		}
		if (steps.length < 2) steps.push(steps[0]);
		const scale = half / steps.reduce((sum, step) => sum + step, 0);
		let x = from;
		for (const step of steps) {
			x += step * scale;
			nodes.push(x);
		}
		nodes[nodes.length - 1] = from + half;
		for (let k = steps.length - 1; k > 0; k--) {
			x = nodes[nodes.length - 1] + steps[k] * scale;
			nodes.push(x);
		}
		nodes.push(to);
	}
	return Float64Array.from(nodes);
}
// src/model/numerics/banded.ts
/**
* Square banded matrix with `lower` diagonals below and `upper` above the main one, solved by
* Gaussian elimination with partial pivoting inside the band (Golub and Van Loan, Matrix
* Computations, 4th ed., section 4.3.5). Row pivoting fills `lower` more diagonals above: room is
* kept for them.
*/
var BandedMatrix = class {
	size;
	lower;
	upper;
	stride;
	data;
	constructor(size, lower, upper) {
		this.size = size;
		this.lower = lower;
		this.upper = upper;
		this.stride = 2 * lower + upper + 1;
		this.data = new Float64Array(size * this.stride);
	}
	clear() {
		this.data.fill(0);
	}
	/** Adds to an entry. The entry must lie inside the band. */
	add(row, column, value) {
		const at = column - row + this.lower;
		if (at < 0 || at > this.lower + this.upper) throw new RangeError(`(${row}, ${column}) lies outside the band`);
		this.data[row * this.stride + at] += value;
	}
	/**
	* Overwrites `rhs` by the solution; the matrix is destroyed.
	* @returns false when a pivot vanishes: the matrix is singular to working precision
	*/
	solve(rhs) {
		const { size: n, lower, stride, data } = this;
		const reach = lower + this.upper;
		for (let k = 0; k < n; k++) {
			const last = Math.min(n - 1, k + lower);
			let pivot = k;
			let best = Math.abs(data[k * stride + lower]);
			for (let i = k + 1; i <= last; i++) {
				const size = Math.abs(data[i * stride + (k - i + lower)]);
				if (size > best) {
					best = size;
					pivot = i;
				}
			}
			if (!(best > 0) || !Number.isFinite(best)) return false;
			const end = Math.min(n - 1, k + reach);
			if (pivot !== k) {
				const a = k * stride + lower - k;
				const b = pivot * stride + lower - pivot;
				for (let j = k; j <= end; j++) {
					const swap = data[a + j];
					data[a + j] = data[b + j];
					data[b + j] = swap;
				}
				const swap = rhs[k];
				rhs[k] = rhs[pivot];
				rhs[pivot] = swap;
			}
			const rowK = k * stride + lower - k;
			const diagonal = data[rowK + k];
			for (let i = k + 1; i <= last; i++) {
				const rowI = i * stride + lower - i;
				const factor = data[rowI + k] / diagonal;
				if (factor === 0) continue;
				for (let j = k + 1; j <= end; j++) data[rowI + j] -= factor * data[rowK + j];
				rhs[i] -= factor * rhs[k];
			}
		}
		for (let k = n - 1; k >= 0; k--) {
			const row = k * stride + lower - k;
			const end = Math.min(n - 1, k + reach);
			let sum = rhs[k];
			for (let j = k + 1; j <= end; j++) sum -= data[row + j] * rhs[j];
			rhs[k] = sum / data[row + k];
		}
		return true;
	}
};
// src/model/chain/newton.ts
/**
* One solution of the chain on given nodes by Newton's method. Cells are joined by the two-point
* Hermite formula, fourth order where the stress is smooth:
*
*   y₁ − y₀ = h/2·(y₀′ + y₁′) + h²/12·(y₀″ − y₁″)
*/
const TOLERANCE$2 = 1e-11;
/**
* @param start nodes, first guess and regimes; the guess is not changed
* @param yieldScale multiplies the yield stress of every bond, for continuation
* @returns null when the iteration does not settle
*/
function newton(problem, control, start, yieldScale = 1, maxIterations = 25) {
	const { channels, bonds, unknowns: m } = layoutOf(problem);
	const { nodes, regimes } = start;
	const cells = nodes.length - 1;
	const size = m * nodes.length;
	const atRoot = control.kind === "slip" && control.end === "root" ? 1 : 0;
	const left = channels * bonds + atRoot;
	const matrix = new BandedMatrix(size, left + m - 1, 2 * m - 1 - left);
	const residual = new Float64Array(size);
	const values = start.values.slice();
	const lambda = m - 1;
	const ratesAt = makeRatesAt(problem, yieldScale);
	const rates0 = makeRates(m);
	const rates1 = makeRates(m);
	const scale = new Float64Array(m);
	for (let q = 0; q < channels; q++) for (let j = 0; j < bonds; j++) {
		const bond = problem.bonds[j];
		scale[2 * (q * bonds + j)] = slipAtYield(bond);
		scale[2 * (q * bonds + j) + 1] = bond.width * bond.shearYield * problem.channels[q].levers[j] * problem.length;
	}
	scale[lambda] = Math.max(Math.abs(values[lambda]), 1e-9);
	const boundary = (withMatrix) => {
		let row = 0;
		const put = (column, value, rowScale) => {
			if (withMatrix) matrix.add(row, column, value * scale[column % m] / rowScale);
		};
		const close = (node) => {
			const at = node * m;
			if (control.kind === "load") {
				residual[row] = (values[at + lambda] - control.factor) / scale[lambda];
				put(at + lambda, 1, scale[lambda]);
			} else {
				const unit = scale[2 * control.bond];
				const s0 = values[at + 2 * control.bond];
				const s1 = channels > 1 ? values[at + 2 * (bonds + control.bond)] : 0;
				const length = Math.hypot(s0, s1);
				residual[row] = (length - control.size) / unit;
				put(at + 2 * control.bond, length > 0 ? s0 / length : 1, unit);
				if (channels > 1) put(at + 2 * (bonds + control.bond), length > 0 ? s1 / length : 0, unit);
			}
			row++;
		};
		for (let q = 0; q < channels; q++) {
			const channel = problem.channels[q];
			let sum = -values[lambda] * channel.load;
			for (let j = 0; j < bonds; j++) sum += values[2 * (q * bonds + j) + 1];
			const unit = scale[2 * q * bonds + 1];
			residual[row] = sum / unit;
			for (let j = 0; j < bonds; j++) put(2 * (q * bonds + j) + 1, 1, unit);
			put(lambda, -channel.load, unit);
			row++;
			if (bonds === 2) {
				const u = 2 * q * bonds;
				const [a0, a1] = [channel.levers[0], channel.levers[1]];
				residual[row] = (values[u] / a0 - values[u + 2] / a1) / scale[u];
				put(u, 1 / a0, scale[u]);
				put(u + 2, -1 / a1, scale[u]);
				row++;
			}
		}
		if (atRoot) close(0);
		row = left + cells * m;
		const end = cells * m;
		for (let q = 0; q < channels; q++) for (let j = 0; j < bonds; j++) {
			const u = end + 2 * (q * bonds + j) + 1;
			residual[row] = values[u] / scale[u % m];
			put(u, 1, scale[u % m]);
			row++;
		}
		if (!atRoot) close(cells);
	};
	const assemble = (withMatrix) => {
		if (withMatrix) matrix.clear();
		boundary(withMatrix);
		for (let i = 0; i < cells; i++) {
			const h = nodes[i + 1] - nodes[i];
			const at = i * m;
			const regime = regimes[i];
			ratesAt(nodes[i], values, at, regime, rates0);
			ratesAt(nodes[i + 1], values, at + m, regime, rates1);
			const half = h / 2;
			const twelfth = h * h / 12;
			for (let r = 0; r < m; r++) {
				const row = left + at + r;
				const unit = scale[r];
				residual[row] = (values[at + m + r] - values[at + r] - half * (rates0.first[r] + rates1.first[r]) - twelfth * (rates0.second[r] - rates1.second[r])) / unit;
				if (!withMatrix) continue;
				for (let c = 0; c < m; c++) {
					const k = r * m + c;
					const own = r === c ? 1 : 0;
					const v0 = -own - half * rates0.firstBy[k] - twelfth * rates0.secondBy[k];
					const v1 = own - half * rates1.firstBy[k] + twelfth * rates1.secondBy[k];
					if (v0 !== 0) matrix.add(row, at + c, v0 * scale[c] / unit);
					if (v1 !== 0) matrix.add(row, at + m + c, v1 * scale[c] / unit);
				}
			}
		}
		let norm = 0;
		for (const value of residual) norm += value * value;
		return Math.sqrt(norm);
	};
	/** Largest unknown in its own scale: what rounding is measured against. */
	const magnitude = () => {
		let most = 1;
		for (let i = 0; i < size; i++) most = Math.max(most, Math.abs(values[i]) / scale[i % m]);
		return most;
	};
	let norm = assemble(true);
	for (let iteration = 0; iteration < maxIterations; iteration++) {
		if (!Number.isFinite(norm)) return null;
		const step = residual.slice();
		if (!matrix.solve(step)) return null;
		const before = values.slice();
		const normBefore = norm;
		let largest = 0;
		for (let i = 0; i < size; i++) largest = Math.max(largest, Math.abs(step[i]));
		let damping = 1;
		let most = 1;
		for (let trial = 0; trial < 10; trial++) {
			for (let i = 0; i < size; i++) values[i] = before[i] - damping * step[i] * scale[i % m];
			norm = assemble(true);
			most = magnitude();
			if (norm <= normBefore * (1 - .1 * damping) || norm < TOLERANCE$2 * most) break;
			if (largest < 1e-9 * most && norm < 1e-8 * most) break;
			damping /= 2;
		}
		if (largest * damping < TOLERANCE$2 * 100 * most && norm < 1e-8 * most) return {
			nodes,
			values,
			regimes
		};
		if (norm < TOLERANCE$2 * .001) return {
			nodes,
			values,
			regimes
		};
	}
	return norm < 1e-8 * magnitude() ? {
		nodes,
		values,
		regimes
	} : null;
}
// src/model/numerics/small-solve.ts
/** Solves A·X = B in place for small dense A (n × n, row-major) and B (n × w); false when singular. */
function solveSmall(a, b, n, w) {
	for (let k = 0; k < n; k++) {
		let pivot = k;
		for (let i = k + 1; i < n; i++) if (Math.abs(a[i * n + k]) > Math.abs(a[pivot * n + k])) pivot = i;
		const top = a[pivot * n + k];
		if (top === 0 || !Number.isFinite(top)) return false;
		if (pivot !== k) {
			for (let c = k; c < n; c++) {
				const swap = a[k * n + c];
				a[k * n + c] = a[pivot * n + c];
				a[pivot * n + c] = swap;
			}
			for (let c = 0; c < w; c++) {
				const swap = b[k * w + c];
				b[k * w + c] = b[pivot * w + c];
				b[pivot * w + c] = swap;
			}
		}
		for (let i = k + 1; i < n; i++) {
			const factor = a[i * n + k] / top;
			if (factor === 0) continue;
			for (let c = k + 1; c < n; c++) a[i * n + c] -= factor * a[k * n + c];
			for (let c = 0; c < w; c++) b[i * w + c] -= factor * b[k * w + c];
		}
	}
	for (let k = n - 1; k >= 0; k--) for (let c = 0; c < w; c++) {
		let sum = b[k * w + c];
		for (let i = k + 1; i < n; i++) sum -= a[k * n + i] * b[i * w + c];
		b[k * w + c] = sum / a[k * n + k];
	}
	return true;
}
// src/model/chain/slip-cell.ts
/** Slip rates at both ends of one cell and their derivatives with respect to both ends' slips. */
var SlipCell = class {
	e0;
	e1;
	/** ∂e₀/∂s₀, ∂e₀/∂s₁, ∂e₁/∂s₀, ∂e₁/∂s₁, row-major. */
	by;
	n;
	channels;
	bonds;
	problem;
	yieldScale;
	/** C: curvature of slip u per stress v, MPa⁻¹mm⁻¹. */
	curvature;
	gradient = /* @__PURE__ */ new Float64Array(4);
	sides;
	constructor(problem, yieldScale) {
		this.problem = problem;
		this.yieldScale = yieldScale;
		this.channels = problem.channels.length;
		this.bonds = problem.bonds.length;
		const n = this.channels * this.bonds;
		this.n = n;
		const square = () => new Float64Array(n * n);
		this.e0 = new Float64Array(n);
		this.e1 = new Float64Array(n);
		this.by = [
			square(),
			square(),
			square(),
			square()
		];
		this.curvature = square();
		problem.channels.forEach((channel, q) => {
			for (let j = 0; j < this.bonds; j++) for (let i = 0; i < this.bonds; i++) {
				const own = i === j ? 1 / channel.outers[j].stiffness : 0;
				this.curvature[(q * this.bonds + j) * n + q * this.bonds + i] = channel.levers[j] * channel.levers[i] * problem.bonds[i].width * (1 / channel.tube.stiffness + own);
			}
		});
		const side = () => ({
			f: new Float64Array(n),
			rate: new Float64Array(n),
			/** G = ∂f/∂s */
			g: square(),
			/** ∂(G·ê)/∂s at fixed ê */
			turn: square(),
			traction: problem.bonds.map(() => makeTraction())
		});
		this.sides = [side(), side()];
	}
	evaluate(end, s, at, regimes) {
		const { n, bonds, channels, curvature: C, problem } = this;
		const { f, g, traction } = this.sides[end];
		for (let j = 0; j < bonds; j++) {
			const bond = problem.bonds[j];
			const s1 = channels > 1 ? s[at + bonds + j] : 0;
			const limit = bond.shearYield * this.yieldScale;
			evaluateLaw(bond.stiffness, limit, s[at + j], s1, regimes[j], traction[j]);
		}
		for (let q = 0; q < channels; q++) for (let j = 0; j < bonds; j++) {
			const u = q * bonds + j;
			let sum = 0;
			for (let i = 0; i < bonds; i++) {
				const c = C[u * n + q * bonds + i];
				sum += c * traction[i].stress[q];
				for (let p = 0; p < channels; p++) g[u * n + p * bonds + i] = c * traction[i].tangent[q + p];
			}
			f[u] = sum;
		}
	}
	/** Derivative of G·ê with the direction of the slip: only two channels at once can turn. */
	evaluateTurn(end, regimes) {
		const { n, bonds, channels, curvature: C, problem } = this;
		const { turn, rate, traction } = this.sides[end];
		turn.fill(0);
		if (channels === 1) return;
		for (let i = 0; i < bonds; i++) {
			if (regimes[i] !== "plastic" || !(traction[i].size > 0)) continue;
			const limit = problem.bonds[i].shearYield * this.yieldScale;
			const d = this.gradient;
			tangentGradient(limit, traction[i], rate[i], rate[bonds + i], d);
			for (let q = 0; q < 2; q++) for (let j = 0; j < bonds; j++) {
				const u = q * bonds + j;
				const c = C[u * n + q * bonds + i];
				turn[u * n + i] += c * d[2 * q];
				turn[u * n + bonds + i] += c * d[2 * q + 1];
			}
		}
	}
	compute(s, at, h, regimes) {
		const { n } = this;
		this.evaluate(0, s, at, regimes);
		this.evaluate(1, s, at + n, regimes);
		const [a, b] = this.sides;
		const smooth = regimes[0] !== "either" && regimes[regimes.length - 1] !== "either";
		for (let u = 0; u < n; u++) {
			const slope = (s[at + n + u] - s[at + u]) / h;
			a.rate[u] = slope - h / 6 * (2 * a.f[u] + b.f[u]);
			b.rate[u] = slope + h / 6 * (a.f[u] + 2 * b.f[u]);
		}
		const twelfth = smooth ? h * h / 12 : 0;
		if (smooth) {
			this.evaluateTurn(0, regimes);
			this.evaluateTurn(1, regimes);
		}
		const [e0s0, e0s1, e1s0, e1s1] = this.by;
		for (let u = 0; u < n; u++) {
			let ga = 0;
			let gb = 0;
			for (let v = 0; v < n; v++) {
				ga += a.g[u * n + v] * a.rate[v];
				gb += b.g[u * n + v] * b.rate[v];
			}
			const sum = 2 * (s[at + n + u] - s[at + u]) / h + h / 6 * (b.f[u] - a.f[u]);
			const difference = h / 2 * (a.f[u] + b.f[u]) + twelfth * (ga - gb);
			this.e0[u] = (sum - difference) / 2;
			this.e1[u] = (sum + difference) / 2;
			for (let v = 0; v < n; v++) {
				const k = u * n + v;
				const one = u === v ? 1 : 0;
				const sumBy0 = -2 * one / h - h / 6 * a.g[k];
				const sumBy1 = 2 * one / h + h / 6 * b.g[k];
				let by0 = h / 2 * a.g[k];
				let by1 = h / 2 * b.g[k];
				if (smooth) {
					let aa = 0;
					let ab = 0;
					let ba = 0;
					let bb = 0;
					for (let w = 0; w < n; w++) {
						const gaw = a.g[u * n + w];
						const gbw = b.g[u * n + w];
						aa += gaw * a.g[w * n + v];
						ab += gaw * b.g[w * n + v];
						ba += gbw * a.g[w * n + v];
						bb += gbw * b.g[w * n + v];
					}
					const ga0 = -a.g[k] / h - h / 3 * aa + a.turn[k];
					const ga1 = a.g[k] / h - h / 6 * ab;
					const gb0 = -b.g[k] / h + h / 6 * ba;
					const gb1 = b.g[k] / h + h / 3 * bb + b.turn[k];
					by0 += twelfth * (ga0 - gb0);
					by1 += twelfth * (ga1 - gb1);
				}
				e0s0[k] = (sumBy0 - by0) / 2;
				e0s1[k] = (sumBy1 - by1) / 2;
				e1s0[k] = (sumBy0 + by0) / 2;
				e1s1[k] = (sumBy1 + by1) / 2;
			}
		}
	}
};
// src/model/chain/slip-ends.ts
/** What closes the chain of slips at its two ends, and the forces that follow from the slip rates. */
function endRows(problem, omega) {
	const bonds = problem.bonds.length;
	const n = problem.channels.length * bonds;
	const make = () => ({
		onRate: new Float64Array(n * n),
		onSlip: new Float64Array(n * n),
		onLambda: new Float64Array(n),
		constant: new Float64Array(n)
	});
	const root = make();
	const mouth = make();
	problem.channels.forEach((channel, q) => {
		const u = q * bonds;
		for (let j = 0; j < bonds; j++) {
			mouth.onRate[(u + j) * n + u + j] = 1;
			mouth.onLambda[u + j] = -channel.levers[j] * channel.load / channel.tube.stiffness;
			mouth.constant[u + j] = -thermalMismatch(channel, j);
		}
		const weights = channel.outers.map((outer, j) => outer.stiffness / channel.levers[j]);
		const total = weights.reduce((sum, weight) => sum + weight, 0);
		for (let j = 0; j < bonds; j++) {
			root.onRate[u * n + u + j] = weights[j] / total;
			root.constant[u] -= weights[j] / total * thermalMismatch(channel, j);
		}
		root.onLambda[u] = channel.load / total;
		if (bonds === 2) {
			root.onSlip[(u + 1) * n + u] = omega / channel.levers[0];
			root.onSlip[(u + 1) * n + u + 1] = -omega / channel.levers[1];
		}
	});
	return {
		root,
		mouth
	};
}
/** Forces of the outers from the slip rates: a(N_t/K_t − N/K) + Δε = e, N_t = λP − ΣN. */
function outerForces(problem, q, lambda, rates, node, values) {
	const channel = problem.channels[q];
	const bonds = problem.bonds.length;
	const n = problem.channels.length * bonds;
	const m = 2 * n + 1;
	const flexTube = 1 / channel.tube.stiffness;
	let stiffness = 0;
	let drawn = 0;
	const strain = channel.outers.map((outer, j) => {
		const r = (rates[node * n + q * bonds + j] - thermalMismatch(channel, j)) / channel.levers[j];
		stiffness += outer.stiffness;
		drawn += outer.stiffness * r;
		return r;
	});
	const tubeForce = (lambda * channel.load + drawn) / (1 + stiffness * flexTube);
	channel.outers.forEach((outer, j) => {
		values[node * m + 2 * (q * bonds + j) + 1] = outer.stiffness * (tubeForce * flexTube - strain[j]);
	});
}
// src/model/chain/slip-newton.ts
/**
* Newton's method on the slips alone, for uniform walls: the forces are eliminated cell by cell
* (`slip-cell.ts`), which leaves a block-tridiagonal system of at most 4 × 4 blocks in the continuity of
* the slip rates at the nodes. Same formula, same order and same answer as `newton.ts`, many times
* faster. Not for bonds so soft that ωL < 0.02: there the differences of slip drown in rounding, and
* `newton.ts` keeps the forces as unknowns.
*/
const TOLERANCE$1 = 1e-12;
/**
* Work arrays kept from call to call: thousands of short solutions would otherwise spend their time
* in the garbage collector. Nothing here outlives a call, and a call never nests.
*/
const scratch = /* @__PURE__ */ new Map();
function workArray(name, size) {
	const kept = scratch.get(name);
	if (kept && kept.length >= size) return kept.subarray(0, size);
	const fresh = new Float64Array(size * 2);
	scratch.set(name, fresh);
	return fresh.subarray(0, size);
}
/**
* @param omega scale of the decay rate, for the weights of the conditions only
* @returns null when the iteration does not settle
*/
function slipNewton(problem, control, start, omega, yieldScale = 1, maxIterations = 25) {
	const bonds = problem.bonds.length;
	const channels = problem.channels.length;
	const n = channels * bonds;
	const m = 2 * n + 1;
	const { nodes, regimes } = start;
	const count = nodes.length;
	const cells = count - 1;
	const slips = workArray("slips", count * n);
	for (let i = 0; i < count; i++) for (let u = 0; u < n; u++) slips[i * n + u] = start.values[i * m + 2 * u];
	let lambda = control.kind === "load" ? control.factor : start.values[m - 1];
	const ends = endRows(problem, omega);
	const cell = new SlipCell(problem, yieldScale);
	const unit = problem.bonds.map(slipAtYield);
	const residual = workArray("residual", count * n);
	const column = workArray("column", count * n);
	const diagonal = workArray("diagonal", count * n * n);
	const ahead = workArray("ahead", count * n * n);
	const behind = workArray("behind", count * n * n);
	const rates = workArray("rates", count * n);
	const reverse = control.kind === "slip" && control.end === "root";
	const applyEnd = (rows, node, e) => {
		for (let u = 0; u < n; u++) {
			let sum = rows.onLambda[u] * lambda + rows.constant[u];
			for (let v = 0; v < n; v++) sum += rows.onRate[u * n + v] * e[v] + rows.onSlip[u * n + v] * slips[node * n + v];
			residual[node * n + u] = sum;
			column[node * n + u] = rows.onLambda[u];
		}
	};
	const addProduct = (rows, by, out, at) => {
		for (let u = 0; u < n; u++) for (let v = 0; v < n; v++) {
			let sum = 0;
			for (let w = 0; w < n; w++) sum += rows.onRate[u * n + w] * by[w * n + v];
			out[at + u * n + v] += sum;
		}
	};
	const assemble = () => {
		diagonal.fill(0);
		residual.fill(0);
		column.fill(0);
		for (let i = 0; i < cells; i++) {
			cell.compute(slips, i * n, nodes[i + 1] - nodes[i], regimes[i]);
			const [e0s0, e0s1, e1s0, e1s1] = cell.by;
			const here = i * n * n;
			const next = here + n * n;
			if (i === 0) {
				applyEnd(ends.root, 0, cell.e0);
				diagonal.set(ends.root.onSlip, 0);
				ahead.fill(0, 0, n * n);
				addProduct(ends.root, e0s0, diagonal, 0);
				addProduct(ends.root, e0s1, ahead, 0);
				rates.set(cell.e0, 0);
			} else {
				for (let u = 0; u < n; u++) residual[i * n + u] -= cell.e0[u];
				for (let k = 0; k < n * n; k++) {
					diagonal[here + k] -= e0s0[k];
					ahead[here + k] = -e0s1[k];
				}
			}
			rates.set(cell.e1, (i + 1) * n);
			if (i === cells - 1) {
				applyEnd(ends.mouth, cells, cell.e1);
				behind.set(e1s0, next);
				diagonal.set(e1s1, next);
			} else {
				for (let u = 0; u < n; u++) residual[(i + 1) * n + u] = cell.e1[u];
				for (let k = 0; k < n * n; k++) {
					diagonal[next + k] = e1s1[k];
					behind[next + k] = e1s0[k];
				}
			}
		}
		let norm = 0;
		for (let i = 0; i < count * n; i++) {
			const scaled = residual[i] / (unit[i % bonds] * omega);
			norm += scaled * scaled;
		}
		if (control.kind === "slip") norm += controlMiss() ** 2;
		return Math.sqrt(norm);
	};
	const controlNode = control.kind === "slip" && control.end === "mouth" ? cells : 0;
	const controlSlip = (q) => control.kind === "slip" ? slips[controlNode * n + q * bonds + control.bond] : 0;
	const controlRadius = () => channels > 1 ? Math.hypot(controlSlip(0), controlSlip(1)) : Math.abs(controlSlip(0));
	function controlMiss() {
		return control.kind === "slip" ? (controlRadius() - control.size) / unit[control.bond] : 0;
	}
	const width = n + 2;
	const solved = workArray("solved", count * n * width);
	const work = new Float64Array(n * n);
	const last = new Float64Array((n + 1) * (n + 1));
	const lastRight = new Float64Array(n + 1);
	const step = workArray("step", count * n);
	let lambdaStep = 0;
	const eliminate = () => {
		for (let k = 0; k < count; k++) {
			const node = reverse ? count - 1 - k : k;
			const here = node * n * n;
			const out = solved.subarray(k * n * width, (k + 1) * n * width);
			const onward = reverse ? behind : ahead;
			const back = reverse ? ahead : behind;
			for (let i = 0; i < n * n; i++) work[i] = diagonal[here + i];
			for (let u = 0; u < n; u++) {
				for (let v = 0; v < n; v++) out[u * width + v] = k < count - 1 ? onward[here + u * n + v] : 0;
				out[u * width + n] = residual[node * n + u];
				out[u * width + n + 1] = column[node * n + u];
			}
			if (k > 0) {
				const before = (k - 1) * n * width;
				for (let u = 0; u < n; u++) for (let w = 0; w < n; w++) {
					const factor = back[here + u * n + w];
					if (factor === 0) continue;
					const row = before + w * width;
					for (let v = 0; v < n; v++) work[u * n + v] -= factor * solved[row + v];
					out[u * width + n] -= factor * solved[row + n];
					out[u * width + n + 1] -= factor * solved[row + n + 1];
				}
			}
			if (k < count - 1) {
				if (!solveSmall(work, out, n, width)) return false;
				continue;
			}
			if (control.kind === "load") {
				lambdaStep = 0;
				if (!solveSmall(work, out, n, width)) return false;
				for (let u = 0; u < n; u++) step[node * n + u] = out[u * width + n];
			} else {
				const side = n + 1;
				last.fill(0);
				const radius = controlRadius();
				for (let u = 0; u < n; u++) {
					for (let v = 0; v < n; v++) last[u * side + v] = work[u * n + v];
					last[u * side + n] = out[u * width + n + 1];
					lastRight[u] = out[u * width + n];
				}
				for (let q = 0; q < channels; q++) last[n * side + q * bonds + control.bond] = (radius > 0 ? controlSlip(q) / radius : q === 0 ? 1 : 0) / unit[control.bond];
				lastRight[n] = controlMiss();
				if (!solveSmall(last, lastRight, side, 1)) return false;
				for (let u = 0; u < n; u++) step[node * n + u] = lastRight[u];
				lambdaStep = lastRight[n];
			}
		}
		for (let k = count - 2; k >= 0; k--) {
			const node = reverse ? count - 1 - k : k;
			const next = reverse ? node - 1 : node + 1;
			for (let u = 0; u < n; u++) {
				const row = k * n * width + u * width;
				let sum = solved[row + n] - solved[row + n + 1] * lambdaStep;
				for (let v = 0; v < n; v++) sum -= solved[row + v] * step[next * n + v];
				step[node * n + u] = sum;
			}
		}
		return true;
	};
	const finish = () => {
		const values = new Float64Array(count * m);
		for (let i = 0; i < count; i++) {
			for (let q = 0; q < channels; q++) outerForces(problem, q, lambda, rates, i, values);
			for (let u = 0; u < n; u++) values[i * m + 2 * u] = slips[i * n + u];
			values[i * m + m - 1] = lambda;
		}
		return {
			nodes,
			values,
			regimes
		};
	};
	/** Largest slip over the slip at yield: what rounding is measured against. */
	const size = () => {
		let most = 1;
		for (let i = 0; i < count * n; i++) most = Math.max(most, Math.abs(slips[i]) / unit[i % bonds]);
		return most;
	};
	let norm = assemble();
	const before = workArray("before", count * n);
	for (let iteration = 0; iteration < maxIterations; iteration++) {
		if (!Number.isFinite(norm)) return null;
		if (!eliminate()) return null;
		before.set(slips);
		const lambdaBefore = lambda;
		const normBefore = norm;
		let largest = 0;
		for (let i = 0; i < count * n; i++) largest = Math.max(largest, Math.abs(step[i]) / unit[i % bonds]);
		let damping = 1;
		let most = 1;
		for (let trial = 0; trial < 8; trial++) {
			for (let i = 0; i < count * n; i++) slips[i] = before[i] - damping * step[i];
			lambda = lambdaBefore - damping * lambdaStep;
			norm = assemble();
			most = size();
			if (norm <= normBefore * (1 - .1 * damping) || norm < TOLERANCE$1 * most) break;
			if (largest < 1e-8 * most && norm < 1e-7 * most) break;
			damping /= 2;
		}
		if (largest * damping < 1e-9 * most && norm < 1e-7 * most) return finish();
		if (norm < TOLERANCE$1 * most) return finish();
	}
	return norm < 1e-8 * size() ? finish() : null;
}
// src/model/chain/solve.ts
/**
* The chain's answer to one question: the state under a load factor, or the load factor at which
* an end slips by a given amount. First on a coarse mesh with the yield stress lowered step by step
* to its true value, then with nodes moved onto the yield fronts until these stand still: there the
* stress is smooth in every cell and the formula keeps its fourth order.
*/
/** Bonds softer than this over their length keep the forces among the unknowns. */
const SOFTEST = .02;
/** The fast method where it holds, the general one for tapers and very soft bonds. */
function iterateFor(problem, omega) {
	if (problem.channels.some(isTapered) || omega * problem.length < SOFTEST) return (control, start, yieldScale, maxIterations) => newton(problem, control, start, yieldScale, maxIterations);
	return (control, start, yieldScale, maxIterations) => slipNewton(problem, control, start, omega, yieldScale, maxIterations);
}
/** Upper bound of the decay rate over all channels and bonds, 1/mm. */
function fastestDecay(problem) {
	let fastest = 0;
	for (const channel of problem.channels) {
		let trace = 0;
		problem.bonds.forEach((bond, j) => {
			const outer = channel.outers[j];
			const softest = Math.min(outer.stiffness, outer.taper?.mouth ?? outer.stiffness);
			trace += channel.levers[j] ** 2 * bond.width * bond.stiffness * (1 / channel.tube.stiffness + 1 / softest);
		});
		fastest = Math.max(fastest, trace);
	}
	return Math.sqrt(fastest);
}
const uniform = (nodes, bonds, regime) => new Array(nodes.length - 1).fill(new Array(bonds).fill(regime));
function resample(problem, chain, nodes) {
	const { unknowns } = layoutOf(problem);
	const at = interpolator(problem, chain);
	const values = new Float64Array(nodes.length * unknowns);
	const out = new Float64Array(unknowns);
	nodes.forEach((x, i) => {
		at(x, out);
		values.set(out, i * unknowns);
	});
	return values;
}
/** The elastic answer, whatever the yield stress: the start of everything else. */
function elasticChain(problem, control, nodes, iterate) {
	const { bonds, channels, unknowns } = layoutOf(problem);
	const regimes = uniform(nodes, bonds, "elastic");
	const solveAt = (factor) => {
		const values = new Float64Array(nodes.length * unknowns);
		for (let i = 0; i < nodes.length; i++) values[(i + 1) * unknowns - 1] = factor;
		const chain = iterate({
			kind: "load",
			factor
		}, {
			nodes,
			values,
			regimes
		});
		if (!chain) throw new ModelError("joint", "The elastic equations have no solution.");
		return chain;
	};
	if (control.kind === "load") return solveAt(control.factor);
	const thermal = solveAt(0);
	const both = solveAt(1);
	const node = control.end === "root" ? 0 : nodes.length - 1;
	let a = 0;
	let b = 0;
	let c = -control.size * control.size;
	for (let q = 0; q < channels; q++) {
		const at = node * unknowns + 2 * (q * bonds + control.bond);
		const t = thermal.values[at];
		const d = both.values[at] - t;
		a += d * d;
		b += t * d;
		c += t * t;
	}
	const factor = (-b + Math.sqrt(Math.max(b * b - a * c, 0))) / a;
	if (!Number.isFinite(factor)) throw new ModelError("load", "The load does not move this end of the bond.");
	return {
		nodes,
		values: thermal.values.map((value, i) => value + factor * (both.values[i] - value)),
		regimes
	};
}
/** Largest |s| over the slip at yield, over all nodes and bonds. */
function largestRatio(problem, chain) {
	let largest = 0;
	for (let j = 0; j < problem.bonds.length; j++) for (let i = 0; i < chain.nodes.length; i++) largest = Math.max(largest, slipRatio(problem, chain, j, i));
	return largest;
}
/** From the elastic answer to the true yield stress on one mesh; null when it cannot be followed. */
function lowerYield(problem, control, elastic, iterate) {
	const either = uniform(elastic.nodes, problem.bonds.length, "either");
	let chain = {
		...elastic,
		regimes: either
	};
	const direct = iterate(control, chain, 1, 12);
	if (direct) return direct;
	let level = Math.max(largestRatio(problem, elastic), 1);
	let ratio = .5;
	for (let step = 0; step < 200 && level > 1; step++) {
		const next = Math.max(level * ratio, 1);
		const advanced = iterate(control, chain, next, 15);
		if (advanced) {
			chain = advanced;
			level = next;
			ratio = Math.max(ratio * ratio, .5);
		} else {
			ratio = Math.sqrt(ratio);
			if (ratio > .9999) return null;
		}
	}
	return level <= 1 ? chain : null;
}
/** Fronts stand still when they move by less than this over 1/ω: the stress then errs by its square. */
const FRONT_TOLERANCE = .001;
/** Cells over 1/ω beside a front, and their growth with the distance from it. */
const ROUGH$1 = {
	first: .3,
	growth: .25
};
const FINE = {
	first: .14,
	growth: .12
};
/** Nodes onto the fronts, until these stand still. */
function sharpen(problem, control, coarse, omega, iterate) {
	const { length } = problem;
	let chain = coarse;
	let fronts = findFronts(problem, chain);
	for (let round = 0; round < 10; round++) {
		const starts = problem.bonds.map((_bond, j) => plasticAtRoot(problem, chain, j));
		const grading = round === 0 ? ROUGH$1 : FINE;
		const nodes = gradedMesh(breakpointsOf(fronts, length, 1e-7 * length), {
			first: grading.first / omega,
			growth: grading.growth,
			largest: length
		});
		const regimes = regimesOf(nodes, fronts, starts);
		const solved = iterate(control, {
			nodes,
			values: resample(problem, chain, nodes),
			regimes
		});
		if (!solved) break;
		chain = solved;
		const moved = findFronts(problem, chain);
		const before = fronts.flat();
		const after = moved.flat();
		fronts = moved;
		if (after.length === before.length && after.every((x, i) => Math.abs(x - before[i]) <= FRONT_TOLERANCE / omega) && round > 0) break;
	}
	return chain;
}
/**
* @throws ModelError when the state cannot be found: the load is beyond what the bond carries
*/
function solveChain(problem, control) {
	const omega = fastestDecay(problem);
	const { length } = problem;
	const iterate = iterateFor(problem, omega);
	for (const fineness of [
		1,
		1.7,
		3
	]) {
		const elastic = elasticChain(problem, control, gradedMesh([0, length], {
			first: .3 / omega / fineness,
			growth: .25 / fineness,
			largest: Math.max(.7 / omega, length / 120) / fineness
		}), iterate);
		if (largestRatio(problem, elastic) <= 1) return refineElastic(problem, control, omega);
		const coarse = lowerYield(problem, control, elastic, iterate);
		if (coarse) return sharpen(problem, control, coarse, omega, iterate);
	}
	throw new ModelError("load", "The plastic state of the bond was not found at this load: lower the load or lengthen the overlap.");
}
/** The elastic answer on the fine mesh: used where a taper leaves no closed form. */
function refineElastic(problem, control, omega) {
	const grading = {
		first: .1 / omega,
		growth: .1,
		largest: problem.length
	};
	return elasticChain(problem, control, gradedMesh([0, problem.length], grading), iterateFor(problem, omega));
}
// src/model/chain/capacity.ts
const ends = ["root", "mouth"];
/** Slip over slip at failure at both ends of every bond, largest first. */
function rankEnds(problem, chain) {
	return problem.bonds.flatMap((bond, j) => ends.map((end) => {
		return {
			bond: j,
			end,
			used: slipRatio(problem, chain, j, end === "root" ? 0 : chain.nodes.length - 1) * slipAtYield(bond) / bond.slipAtFailure
		};
	})).sort((a, b) => b.used - a.used);
}
/**
* @param first bond and end to try first; the answer does not depend on it, only the time does
* @throws ModelError when no load moves any end
*/
function chainCapacity(problem, first) {
	const targets = [first, ...problem.bonds.flatMap((_bond, j) => ends.map((end) => ({
		bond: j,
		end
	})))];
	const tried = /* @__PURE__ */ new Set();
	let best = null;
	let refusal = null;
	for (let target = targets.shift(); target; target = targets.shift()) {
		const name = `${target.bond} ${target.end}`;
		if (tried.has(name)) continue;
		tried.add(name);
		const size = problem.bonds[target.bond].slipAtFailure;
		let chain;
		try {
			chain = solveChain(problem, {
				kind: "slip",
				bond: target.bond,
				end: target.end,
				size
			});
		} catch (error) {
			refusal = error;
			continue;
		}
		const factor = chain.values[chain.values.length - 1];
		if (!best || factor < best.factor) best = {
			factor,
			bond: target.bond,
			end: target.end,
			chain
		};
		const worst = rankEnds(problem, chain)[0];
		if (worst.used <= 1 + 1e-9) break;
		targets.unshift(worst);
	}
	if (!best) throw refusal;
	return best;
}
// src/model/shear-lag/basis.ts
function makeBasis(omega, length) {
	const decay = Math.exp(-omega * length);
	const rise = -Math.expm1(-omega * length);
	/** e^(−ω(L−x)) − e^(−ωx), without cancellation near the middle. */
	const difference = (x) => {
		const far = omega * (2 * x - length);
		return far >= 0 ? -Math.exp(-omega * (length - x)) * Math.expm1(-far) : Math.exp(-omega * x) * Math.expm1(far);
	};
	const evenHalf = rise / (omega * (1 + decay));
	const tanh = rise / (1 + decay);
	return {
		omega,
		length,
		tanh,
		even: (x) => (Math.exp(-omega * (length - x)) + Math.exp(-omega * x)) / (1 + decay),
		odd: (x) => difference(x) / rise,
		evenBeyond: (x) => evenHalf - difference(x) / (omega * (1 + decay)),
		oddBeyond: (x) => Math.expm1(-omega * x) * Math.expm1(-omega * (length - x)) / (omega * rise),
		evenArea: length * tanh / omega,
		oddArea: length * length * excess(omega * length / 2)
	};
}
/** (z·coth z − 1)/(2z²), z = ωL/2: 1/6 for a soft bond, 1/(2z) for a long one. */
function excess(z) {
	if (z < .1) {
		const square = z * z;
		return (1 / 3 - square * (1 / 45 - square * (2 / 945 - square / 4725))) / 2;
	}
	return (z / Math.tanh(z) - 1) / (2 * z * z);
}
// src/model/shear-lag/one-bond.ts
/**
* Shear lag of one bondline.
*
*   τ″ = ω²τ,  ω² = a²·c·k·(1/K_t + 1/K_s)
*   τ′(0) = k(−aP/K_s + Δε),  τ′(L) = k(aP/K_t + Δε),  ∫ a·c·τ dx = P
*
* Source: O. Volkersen (1938), as extended by a thermal mismatch Δε = (α_t − α_s)·ΔT; written about
* the middle of the overlap. Valid for thin walls that stay straight; uniform walls only.
*/
/** Decay rate of the shear from an end, 1/mm. */
function decayRate(channel, bond) {
	const lever = channel.levers[0];
	const compliance = 1 / channel.tube.stiffness + 1 / channel.outers[0].stiffness;
	return lever * Math.sqrt(bond.width * bond.stiffness * compliance);
}
function solveOneBond(channel, bond, length) {
	const lever = channel.levers[0];
	const omega = decayRate(channel, bond);
	const basis = makeBasis(omega, length);
	const transfer = lever * bond.width;
	const imbalance = 1 / channel.tube.stiffness - 1 / channel.outers[0].stiffness;
	const oddPerSlope = basis.tanh / (2 * omega);
	const part = (even, odd) => ({
		shear: (_j, x) => even * basis.even(x) + odd * basis.odd(x),
		outerForce: (_j, x) => transfer * (even * basis.evenBeyond(x) + odd * basis.oddBeyond(x)),
		outerStretch: () => transfer * (even * basis.evenArea + odd * basis.oddArea) / channel.outers[0].stiffness
	});
	const load = channel.load;
	return {
		mechanical: part(load * omega / (2 * transfer * basis.tanh), bond.stiffness * lever * load * imbalance * oddPerSlope),
		thermal: part(0, 2 * bond.stiffness * thermalMismatch(channel, 0) * oddPerSlope),
		omegaMax: omega,
		omegaMin: omega
	};
}
// src/model/plastic/one-bond.ts
/**
* Elastic - perfectly plastic shear lag of one bond in one channel, exact (L. J. Hart-Smith's
* problem, 1973), with unequal adherends and thermal mismatch.
*
*   s″ = C·τ(s),  τ = k·s to s_e, then τp;  C = a²c(1/K_t + 1/K_s);  ω² = C·k
*
* In a plastic zone s is a parabola, in the elastic trough a pair of decaying exponentials; the
* trough's length ℓ is the root of one monotone equation for each arrangement of the zones.
* With g0 = −s′(0), gL = s′(L), q = C·τp = ω²·s_e and z = ωℓ/2:
*
*   both ends, same direction   g0 + gL = q(L − ℓ) + 2·ω·s_e·tanh z
*   both ends, opposite         g0 − gL = q(L − ℓ) + 2·ω·s_e·coth z
*   one end (here x = L)        gL = q(L − ℓ) + ω·s_e·tanh ωℓ − g0/cosh ωℓ
*
* Valid for a load below a·c·τp·L, at which the whole bond flows.
*/
/** Load at which the whole bond flows: no equilibrium beyond it. */
const flowLoad = (channel, bond, length) => channel.levers[0] * bond.width * bond.shearYield * length;
function endsOf(channel, bond, length) {
	const omega = decayRate(channel, bond);
	const yieldSlip = slipAtYield(bond);
	const strain = channel.levers[0] * channel.load;
	const mismatch = thermalMismatch(channel, 0);
	return {
		omega,
		yieldSlip,
		q: omega * omega * yieldSlip,
		g0: strain / channel.outers[0].stiffness - mismatch,
		gL: strain / channel.tube.stiffness + mismatch,
		length
	};
}
/** z − tanh z, without cancellation for small z. */
function tanhDefect(z) {
	if (z > .05) return z - Math.tanh(z);
	const z2 = z * z;
	return z * z2 * (1 - z2 * (2 / 5 - z2 * (17 / 105 - z2 * 62 / 945))) / 3;
}
function bothSame({ omega, yieldSlip, q, length }, g0, gL) {
	const excess = length - (g0 + gL) / q;
	if (excess < 0) return null;
	const balance = (trough) => 2 / omega * tanhDefect(omega * trough / 2) - excess;
	if (!(balance(length) > 0)) return null;
	const trough = excess === 0 ? 0 : findRoot(balance, 0, length);
	const slope = omega * yieldSlip * Math.tanh(omega * trough / 2);
	const zones = [(g0 - slope) / q, (gL - slope) / q];
	return zones[0] >= 0 && zones[1] >= 0 ? zones : null;
}
function bothOpposite({ omega, yieldSlip, q, length }, g0, gL) {
	const slope = (trough) => omega * yieldSlip / Math.tanh(omega * trough / 2);
	const balance = (trough) => (g0 + gL - 2 * slope(trough)) / q + trough - length;
	if (!(balance(length) > 0)) return null;
	const trough = findRoot(balance, length * 1e-12, length);
	const zones = [(g0 - slope(trough)) / q, (gL - slope(trough)) / q];
	return zones[0] >= 0 && zones[1] >= 0 ? zones : null;
}
/** Plastic zone at one end; `near` is that end's slope, `far` that of the elastic end. */
function oneEnd({ omega, yieldSlip, q, length }, near, far) {
	const farSlip = (trough) => {
		const decay = Math.exp(-omega * trough);
		const cosh = 1 + decay * decay;
		return (yieldSlip * 2 * decay + far / omega * (1 - decay * decay)) / cosh;
	};
	const balance = (trough) => {
		const decay = Math.exp(-omega * trough);
		return near - q * (length - trough) - omega * yieldSlip * Math.tanh(omega * trough) + far * 2 * decay / (1 + decay * decay);
	};
	const bound = far / (omega * yieldSlip);
	if (bound >= 1) return null;
	const shortest = bound > 0 ? 2 / omega * Math.atanh(bound) : 0;
	if (shortest >= length || !(balance(length) >= 0) || !(balance(shortest) <= 0)) return null;
	const trough = findRoot(balance, shortest, length);
	return Math.abs(farSlip(trough)) <= yieldSlip * (1 + 1e-9) ? length - trough : null;
}
/**
* @throws RangeError when the load is above `flowLoad`: no equilibrium
*/
function solvePlastic(channel, bond, length) {
	const ends = endsOf(channel, bond, length);
	const { omega, yieldSlip, q, g0, gL } = ends;
	const basis = makeBasis(omega, length);
	const even = (g0 + gL) / (2 * omega * basis.tanh);
	const odd = (gL - g0) * basis.tanh / (2 * omega);
	const elasticRoot = even - odd;
	const elasticMouth = even + odd;
	const signRoot = Math.sign(elasticRoot);
	const signMouth = Math.sign(elasticMouth);
	const atYield = yieldSlip * (1 + 1e-9);
	const rootYields = Math.abs(elasticRoot) > atYield;
	const mouthYields = Math.abs(elasticMouth) > atYield;
	if (!rootYields && !mouthYields) return describe(ends, channel, bond, [0, 0], elasticRoot, elasticMouth);
	const arrangements = [
		() => {
			const zones = (signRoot * signMouth < 0 ? bothOpposite : bothSame)(ends, signRoot * g0, signMouth * gL);
			return zones && [
				zones,
				signRoot * yieldSlip,
				signMouth * yieldSlip
			];
		},
		() => {
			const zone = oneEnd(ends, signMouth * gL, signMouth * g0);
			if (zone === null) return null;
			const trough = makeBasis(omega, length - zone);
			return [
				[0, zone],
				startOf(trough, signMouth * yieldSlip, g0),
				signMouth * yieldSlip
			];
		},
		() => {
			const zone = oneEnd(ends, signRoot * g0, signRoot * gL);
			if (zone === null) return null;
			const trough = makeBasis(omega, length - zone);
			return [
				[zone, 0],
				signRoot * yieldSlip,
				startOf(trough, signRoot * yieldSlip, gL)
			];
		}
	];
	if (!(rootYields && mouthYields)) arrangements.push(arrangements.shift());
	for (const arrangement of arrangements) {
		const found = arrangement();
		if (found) return describe(ends, channel, bond, ...found);
	}
	throw new RangeError(`no equilibrium at a load of ${channel.load} N: the bond flows at ${flowLoad(channel, bond, length)} N (q ${q})`);
}
/** Slip at the elastic end of a trough whose other end is at yield; `slope` is outward there. */
function startOf(trough, atYield, slope) {
	const decay = Math.exp(-trough.omega * trough.length);
	const cosh = 1 + decay * decay;
	return (atYield * 2 * decay + slope / trough.omega * (1 - decay * decay)) / cosh;
}
/** The solution's curves from the zones and the slips at the ends of the elastic trough. */
function describe(ends, channel, bond, zones, troughStart, troughEnd) {
	const { omega, q, g0, gL, length } = ends;
	const [c0, cL] = zones;
	const trough = Math.max(length - c0 - cL, 0);
	const basis = makeBasis(omega, Math.max(trough, length * 1e-12));
	const even = (troughStart + troughEnd) / 2;
	const odd = (troughEnd - troughStart) / 2;
	const curveRoot = Math.sign(troughStart) * q;
	const curveMouth = Math.sign(troughEnd) * q;
	const slipAtRoot = c0 > 0 ? troughStart + g0 * c0 - curveRoot * c0 * c0 / 2 : troughStart;
	const slipAtMouth = cL > 0 ? troughEnd + gL * cL - curveMouth * cL * cL / 2 : troughEnd;
	const inside = (x) => Math.min(Math.max(x, 0), length);
	const slip = (station) => {
		const x = inside(station);
		if (x < c0) return slipAtRoot - g0 * x + curveRoot * x * x / 2;
		const back = length - x;
		if (back < cL) return slipAtMouth - gL * back + curveMouth * back * back / 2;
		const xi = Math.min(Math.max(x - c0, 0), trough);
		return even * basis.even(xi) + odd * basis.odd(xi);
	};
	const shear = (station) => {
		const x = inside(station);
		if (x < c0) return Math.sign(troughStart) * bond.shearYield;
		if (length - x < cL) return Math.sign(troughEnd) * bond.shearYield;
		return bond.stiffness * slip(x);
	};
	const transfer = channel.levers[0] * bond.width;
	const outerForce = (station) => {
		const x = inside(station);
		const inMouth = Math.min(length - x, cL);
		let sum = Math.sign(troughEnd) * bond.shearYield * inMouth;
		const xi = Math.min(Math.max(x - c0, 0), trough);
		if (length - x > cL) sum += bond.stiffness * (even * basis.evenBeyond(xi) + odd * basis.oddBeyond(xi));
		if (x < c0) sum += Math.sign(troughStart) * bond.shearYield * (c0 - x);
		return transfer * sum;
	};
	return {
		plasticAtRoot: c0,
		plasticAtMouth: cL,
		slipAtRoot,
		slipAtMouth,
		slip,
		shear,
		outerForce,
		lowestShear: bond.stiffness * lowestSlip(omega, trough, even, odd)
	};
}
/** Lowest |even·cosh ωξ/cosh + odd·sinh ωξ/sinh| over −ℓ/2 … ℓ/2. */
function lowestSlip(omega, trough, even, odd) {
	const ends = Math.min(Math.abs(even - odd), Math.abs(even + odd));
	if ((even - odd) * (even + odd) <= 0) return 0;
	const tanh = Math.tanh(omega * trough / 2);
	if (!(tanh > 0)) return ends;
	const ratio = odd / (even * tanh);
	if (Math.abs(ratio) >= tanh) return ends;
	return Math.abs(even) * Math.sqrt(1 - ratio * ratio) / Math.cosh(omega * trough / 2);
}
// src/model/shear-lag/elastic.ts
/** Sum of both parts, the mechanical one times `factor`. */
function combine(solution, factor) {
	const { mechanical, thermal } = solution;
	return {
		shear: (j, x) => factor * mechanical.shear(j, x) + thermal.shear(j, x),
		outerForce: (j, x) => factor * mechanical.outerForce(j, x) + thermal.outerForce(j, x),
		outerStretch: (j) => factor * mechanical.outerStretch(j) + thermal.outerStretch(j)
	};
}
// src/model/shear-lag/two-bond.ts
/**
* Shear lag of two bondlines on the two faces of one tube wall (or strip).
*
*   τ_j″ = k_j·a_j·( Σ a_i·c_i·τ_i / K_t + a_j·c_j·τ_j / K_j )
*   mouth: τ_j′(L) = k_j(a_j·P/K_t + Δε_j);  root: s_1/a_1 = s_2/a_2 and Σ ∫ a_j·c_j·τ_j dx = P
*
* The outer adherends are one piece of metal behind the root, so they share one displacement there:
* that, not an assumed half and half, decides who carries what. With y_j = τ_j·√(c_j/k_j) the matrix
* is symmetric, p pᵀ/K_t + diag(p_j²/K_j), p_j = a_j·√(c_j·k_j); its eigenvectors uncouple all
* conditions but two. The symmetric flat double lap is the special case of equal halves.
*/
/** Eigenpairs of the symmetric matrix [[a, b], [b, d]], larger first; positive definite is assumed. */
function eigenpairs(a, b, d, determinant) {
	const half = (a - d) / 2;
	const large = (a + d) / 2 + Math.hypot(half, b);
	const small = determinant / large;
	const angle = Math.atan2(b, half) / 2;
	const c = Math.cos(angle);
	const s = Math.sin(angle);
	return [{
		omega: Math.sqrt(large),
		v: [c, s]
	}, {
		omega: Math.sqrt(small),
		v: [-s, c]
	}];
}
const dot$2 = (u, v) => u[0] * v[0] + u[1] * v[1];
function solveTwoBonds(channel, bonds, length) {
	const [bond1, bond2] = [bonds[0], bonds[1]];
	const root1 = Math.sqrt(bond1.width * bond1.stiffness);
	const root2 = Math.sqrt(bond2.width * bond2.stiffness);
	const p = [channel.levers[0] * root1, channel.levers[1] * root2];
	const flexTube = 1 / channel.tube.stiffness;
	const flex1 = 1 / channel.outers[0].stiffness;
	const flex2 = 1 / channel.outers[1].stiffness;
	const determinant = p[0] ** 2 * p[1] ** 2 * (flexTube * (flex1 + flex2) + flex1 * flex2);
	const modes = eigenpairs(p[0] ** 2 * (flexTube + flex1), p[0] * p[1] * flexTube, p[1] ** 2 * (flexTube + flex2), determinant);
	const bases = modes.map(({ omega }) => makeBasis(omega, length));
	/** A slip common to both joined outers: orthogonal to this. */
	const tie = [p[1], -p[0]];
	const solve = (load, slope) => {
		const force = modes.map(({ omega, v }, m) => dot$2(p, v) * 2 * bases[m].tanh / omega);
		const joined = modes.map(({ v }, m) => dot$2(tie, v) * (1 + bases[m].tanh ** 2));
		const drive = modes.map(({ omega, v }, m) => dot$2(v, slope) * bases[m].tanh / omega);
		const free = dot$2(tie, modes[0].v) * drive[0] + dot$2(tie, modes[1].v) * drive[1];
		const scale = force[0] * joined[1] - force[1] * joined[0];
		const even = [(load * joined[1] - free * force[1]) / scale, (free * force[0] - load * joined[0]) / scale];
		const odd = drive.map((value, m) => value - even[m] * bases[m].tanh ** 2);
		const perBond = [Math.sqrt(bond1.stiffness / bond1.width), Math.sqrt(bond2.stiffness / bond2.width)];
		return {
			shear: (j, x) => perBond[j] * (modes[0].v[j] * (even[0] * bases[0].even(x) + odd[0] * bases[0].odd(x)) + modes[1].v[j] * (even[1] * bases[1].even(x) + odd[1] * bases[1].odd(x))),
			outerForce: (j, x) => p[j] * (modes[0].v[j] * (even[0] * bases[0].evenBeyond(x) + odd[0] * bases[0].oddBeyond(x)) + modes[1].v[j] * (even[1] * bases[1].evenBeyond(x) + odd[1] * bases[1].oddBeyond(x))),
			outerStretch: (j) => p[j] * (modes[0].v[j] * (even[0] * bases[0].evenArea + odd[0] * bases[0].oddArea) + modes[1].v[j] * (even[1] * bases[1].evenArea + odd[1] * bases[1].oddArea)) / channel.outers[j].stiffness
		};
	};
	const { load } = channel;
	return {
		mechanical: solve(load, [p[0] * load * flexTube, p[1] * load * flexTube]),
		thermal: solve(0, [root1 * thermalMismatch(channel, 0), root2 * thermalMismatch(channel, 1)]),
		omegaMax: modes[0].omega,
		omegaMin: modes[1].omega
	};
}
// src/model/shear-lag/solve-elastic.ts
/** The elastic solution of one channel, whichever form it takes. */
function solveElastic(channel, bonds, length) {
	if (isTapered(channel)) return solveTapered(channel, bonds, length);
	return bonds.length === 1 ? solveOneBond(channel, bonds[0], length) : solveTwoBonds(channel, bonds, length);
}
/** Gauss's two points of a cell: exact for the cubic that the chain is between its nodes. */
const GAUSS = [.5 - Math.sqrt(3) / 6, .5 + Math.sqrt(3) / 6];
/** A taper leaves no closed form: the chain, once for the load and once for the temperature. */
function solveTapered(channel, bonds, length) {
	const cold = {
		...channel,
		tube: {
			...channel.tube,
			thermalStrain: 0
		},
		outers: channel.outers.map((outer) => ({
			...outer,
			thermalStrain: 0
		}))
	};
	const part = (alone) => {
		const problem = {
			length,
			bonds,
			channels: [alone]
		};
		const chain = refineElastic(problem, {
			kind: "load",
			factor: 1
		}, fastestDecay(problem));
		const at = interpolator(problem, chain);
		const out = new Float64Array(2 * bonds.length + 1);
		return {
			shear: (j, x) => {
				at(x, out);
				return bonds[j].stiffness * out[2 * j];
			},
			outerForce: (j, x) => {
				at(x, out);
				return out[2 * j + 1];
			},
			outerStretch: (j) => {
				const outer = channel.outers[j];
				let stretch = 0;
				for (let i = 1; i < chain.nodes.length; i++) {
					const from = chain.nodes[i - 1];
					const cell = chain.nodes[i] - from;
					for (const share of GAUSS) {
						const x = from + share * cell;
						at(x, out);
						stretch += cell / 2 * out[2 * j + 1] / stiffnessAt(outer, x, length)[0];
					}
				}
				return stretch;
			}
		};
	};
	const omega = fastestDecay({
		length,
		bonds,
		channels: [channel]
	});
	return {
		mechanical: part(cold),
		thermal: part({
			...channel,
			load: 0
		}),
		omegaMax: omega,
		omegaMin: omega
	};
}
// src/model/joint/lap-state.ts
/**
* One state of the lap, however it was found: closed form, exact plastic, or chain. Everything that
* draws or judges a bond reads it through this.
*/
/** True when the exact one-bond solution holds: one bond, one channel, uniform walls. */
const hasExactPlastic = (problem) => problem.bonds.length === 1 && problem.channels.length === 1 && !isTapered(problem.channels[0]);
/** Elastic state at a load factor, yield or not. */
function elasticState(problem, factor) {
	const parts = problem.channels.map((channel) => combine(solveElastic(channel, problem.bonds, problem.length), factor));
	return {
		slip: (q, j, x) => parts[q].shear(j, x) / problem.bonds[j].stiffness,
		shear: (q, j, x) => parts[q].shear(j, x),
		outerForce: (q, j, x) => parts[q].outerForce(j, x),
		plastic: () => []
	};
}
/**
* State with yielding at a load factor.
* @throws ModelError or RangeError when the bond cannot carry it
*/
function plasticState(problem, factor) {
	if (hasExactPlastic(problem)) {
		const [channel] = scaleLoads(problem, factor).channels;
		const solved = solvePlastic(channel, problem.bonds[0], problem.length);
		const { length } = problem;
		const stretches = [];
		if (solved.plasticAtRoot > 0) stretches.push({
			from: 0,
			to: solved.plasticAtRoot
		});
		if (solved.plasticAtMouth > 0) stretches.push({
			from: length - solved.plasticAtMouth,
			to: length
		});
		return {
			slip: (_q, _j, x) => solved.slip(x),
			shear: (_q, _j, x) => solved.shear(x),
			outerForce: (_q, _j, x) => solved.outerForce(x),
			plastic: () => stretches
		};
	}
	return chainState(problem, solveChain(problem, {
		kind: "load",
		factor
	}));
}
function chainState(problem, chain) {
	const { bonds, unknowns } = layoutOf(problem);
	const at = interpolator(problem, chain);
	const out = new Float64Array(unknowns);
	let last = NaN;
	const read = (x) => {
		if (x !== last) at(x, out);
		last = x;
		return out;
	};
	const slip = (q, j, x) => read(x)[2 * (q * bonds + j)];
	return {
		slip,
		shear: (q, j, x) => {
			const size = Math.hypot(...problem.channels.map((_c, p) => slip(p, j, x)));
			const atYield = slipAtYield(problem.bonds[j]);
			return problem.bonds[j].stiffness * slip(q, j, x) / Math.max(1, size / atYield);
		},
		outerForce: (q, j, x) => read(x)[2 * (q * bonds + j) + 1],
		plastic: (j) => {
			const marks = [
				0,
				...findFronts(problem, chain)[j],
				problem.length
			];
			let inside = plasticAtRoot(problem, chain, j);
			const stretches = [];
			for (let i = 1; i < marks.length; i++) {
				if (inside) stretches.push({
					from: marks[i - 1],
					to: marks[i]
				});
				inside = !inside;
			}
			return stretches;
		}
	};
}
/** Size of the shear in bond j at x, all channels together. */
function resultant(problem, state, j, x) {
	if (problem.channels.length === 1) return Math.abs(state.shear(0, j, x));
	return Math.hypot(state.shear(0, j, x), state.shear(1, j, x));
}
// src/model/plastic/one-bond-capacity.ts
const times$1 = (channel, factor) => ({
	...channel,
	load: channel.load * factor
});
/** Just below the flow load, where the equations still have a solution. */
const nearly$1 = 1 - 1e-12;
/**
* Load factor at which the larger end slip reaches the slip at failure, or the whole bond flows.
* @returns factor 0 when temperature alone is enough
* @throws RangeError when the channel has no load
*/
function capacityOf(channel, bond, length) {
	if (channel.load === 0) throw new RangeError("a channel without load has no capacity factor");
	const flow = flowLoad(channel, bond, length) / Math.abs(channel.load);
	const excess = (factor) => {
		const state = solvePlastic(times$1(channel, factor), bond, length);
		return Math.max(Math.abs(state.slipAtRoot), Math.abs(state.slipAtMouth)) / bond.slipAtFailure - 1;
	};
	const endAt = (factor) => {
		const state = solvePlastic(times$1(channel, factor), bond, length);
		return Math.abs(state.slipAtRoot) > Math.abs(state.slipAtMouth) ? "root" : "mouth";
	};
	if (excess(0) >= 0) return {
		factor: 0,
		end: endAt(0),
		wholeBondFlows: false
	};
	const limit = flow * nearly$1;
	if (excess(limit) <= 0) return {
		factor: flow,
		end: endAt(limit),
		wholeBondFlows: true
	};
	const factor = findRoot(excess, 0, limit);
	return {
		factor,
		end: endAt(factor),
		wholeBondFlows: false
	};
}
/** Highest load factor at which the lowest |shear| is at or below `ratio` of yield, below `limit`. */
function troughFactor(channel, bond, length, ratio, limit) {
	const excess = (factor) => solvePlastic(times$1(channel, factor), bond, length).lowestShear / bond.shearYield - ratio;
	const top = Math.min(limit, flowLoad(channel, bond, length) / Math.abs(channel.load) * nearly$1);
	if (excess(0) > 0) return 0;
	if (excess(top) <= 0) return limit;
	return findRoot(excess, 0, top);
}
// src/model/margins/bond-strength.ts
/**
* What the bond carries at one clocking, by adhesive ultimate strain, and how long it keeps an
* elastic trough. Exact for one bond in one channel, by the chain otherwise.
*/
/** Durability: the elastic trough's lowest shear over the yield shear may be this much. */
const TROUGH_RATIO = .1;
const hasLoad = (problem) => problem.channels.some((channel) => channel.load !== 0);
/** @param atYield where the bond first yields, from `shearFactor` with the yield stress as limit */
function bondStrength(problem, atYield) {
	if (!hasLoad(problem)) return null;
	const end = atYield.x < problem.length / 2 ? "root" : "mouth";
	if (hasExactPlastic(problem)) return {
		...capacityOf(problem.channels[0], problem.bonds[0], problem.length),
		bond: 0
	};
	if (atYield.factor === 0) {
		const worn = wornByTemperature$1(problem);
		if (worn) return worn;
	}
	const found = chainCapacity(problem, {
		bond: atYield.bond,
		end
	});
	const allPlastic = found.chain.regimes.every((cell) => cell.every((r) => r === "plastic"));
	return {
		factor: Math.max(found.factor, 0),
		bond: found.bond,
		end: found.end,
		wholeBondFlows: allPlastic,
		failed: chainState(problem, found.chain)
	};
}
/** The end that temperature alone takes to its slip at failure, if any. */
function wornByTemperature$1(problem) {
	const state = plasticState(problem, 0);
	for (let j = 0; j < problem.bonds.length; j++) for (const end of ["root", "mouth"]) {
		const x = end === "root" ? 0 : problem.length;
		if (Math.hypot(...problem.channels.map((_c, q) => state.slip(q, j, x))) >= problem.bonds[j].slipAtFailure) return {
			factor: 0,
			bond: j,
			end,
			wholeBondFlows: false
		};
	}
	return null;
}
/** Lowest |shear| of bond j along the overlap over its yield stress. */
function lowestRatio(problem, state, j) {
	const { length } = problem;
	const count = 48;
	const at = (i) => length * i / count;
	if (problem.channels.length === 1) {
		const sign = Math.sign(state.shear(0, j, 0));
		for (let i = 1; i <= count; i++) if (Math.sign(state.shear(0, j, at(i))) !== sign) return 0;
	}
	let low = 0;
	let value = Number.POSITIVE_INFINITY;
	for (let i = 0; i <= count; i++) {
		const shear = resultant(problem, state, j, at(i));
		if (shear < value) {
			value = shear;
			low = i;
		}
	}
	const x = findMinimum((s) => resultant(problem, state, j, s), at(Math.max(low - 1, 0)), at(Math.min(low + 1, count)), length * 1e-6);
	return Math.min(value, resultant(problem, state, j, x)) / problem.bonds[j].shearYield;
}
/** The same, worst over the bonds: each must keep its own trough. */
function troughRatio(problem, state) {
	return Math.max(...problem.bonds.map((_bond, j) => lowestRatio(problem, state, j)));
}
/**
* Load factor at which the trough's lowest shear reaches a tenth of yield; the strength itself
* where the trough outlasts the bond.
*
* @param enough a factor past which the caller has no interest: Infinity is returned when the trough
*   is still there, which spares the search
*/
function troughReached(problem, atYield, strength, enough = Number.POSITIVE_INFINITY) {
	if (hasExactPlastic(problem)) {
		const channel = problem.channels[0];
		return troughFactor(channel, problem.bonds[0], problem.length, TROUGH_RATIO, strength.factor);
	}
	const excessIn = (state) => troughRatio(problem, state) - TROUGH_RATIO;
	const elastic = (factor) => excessIn(elasticState(problem, factor));
	const plastic = (factor) => {
		try {
			return excessIn(plasticState(problem, factor));
		} catch (error) {
			if (error instanceof ModelError && factor > strength.factor * .99) return .9;
			throw error;
		}
	};
	if (elastic(0) > 0) return 0;
	const onset = Math.min(atYield.factor, strength.factor);
	if (elastic(onset) > 0) return findRoot(elastic, 0, onset, onset * 1e-9);
	if (onset === strength.factor) return onset;
	if (!strength.wholeBondFlows && strength.failed && excessIn(strength.failed) <= 0) return strength.factor;
	const top = strength.factor * (1 - 1e-9);
	const limit = Math.min(enough, top);
	if (limit <= onset || plastic(limit) <= 0) return enough < top ? Number.POSITIVE_INFINITY : strength.factor;
	return findRoot(plastic, onset, limit, limit * 1e-5);
}
// src/model/margins/clocking.ts
const STEP = Math.PI / 12;
/** Clockings from 0 to 2π at which a mode can be worst, before refinement. */
function clockings(flat, loads) {
	if (flat || loads.moment === 0 && loads.shear === 0) return [0];
	if (loads.shear === 0) return [0, Math.PI];
	return Array.from({ length: 24 }, (_v, i) => i * STEP);
}
/**
* Local minima of a factor over the clockings, lowest first, refined where the loads need it.
* @param at load factor at a clocking; Infinity where the mode is not reached
*/
function worstClockings(flat, loads, at) {
	const thetas = clockings(flat, loads);
	const values = thetas.map((theta) => ({
		theta,
		factor: at(theta)
	}));
	if (thetas.length <= 2) return values.sort((a, b) => a.factor - b.factor);
	const count = values.length;
	const dips = values.filter(({ factor }, i) => {
		const before = values[(i + count - 1) % count].factor;
		const after = values[(i + 1) % count].factor;
		return factor <= before && factor < after && Number.isFinite(factor);
	});
	if (dips.length === 0) return values.slice(0, 1);
	return dips.map(({ theta }) => {
		const refined = findMinimum(at, theta - STEP, theta + STEP, 1e-4);
		return {
			theta: (refined + 2 * Math.PI) % (2 * Math.PI),
			factor: at(refined)
		};
	}).sort((a, b) => a.factor - b.factor);
}
// src/model/margins/result.ts
/** Lowest first; of equal ones what ends the joint comes before what limits its service. */
function byMargin(a, b) {
	if (a.margin !== b.margin) return a.margin < b.margin ? -1 : 1;
	return Number(FAILURE_MODES.has(b.mode)) - Number(FAILURE_MODES.has(a.mode));
}
const placeOf$2 = (x, length) => x <= 1e-6 * length ? "root" : x >= (1 - 1e-6) * length ? "mouth" : "within";
/** What follows from the factors and the place stands in one spot. */
const resultOf = ({ assembly, gapState }, found) => ({
	...found,
	margin: found.reached / found.asked - 1,
	place: placeOf$2(found.x, assembly.overlap),
	gapState
});
// src/model/margins/shear-factor.ts
/**
* Root of |(t + λm, λn)| = limit for λ ≥ 0: how much load the fixed stress t leaves room for.
* Scales apply to the two components alike. 0 when t alone is enough.
*/
function factorTo(limit, t, m, n) {
	const room = limit * limit - t * t;
	if (room <= 0) return 0;
	const a = m * m + n * n;
	if (a === 0) return Number.POSITIVE_INFINITY;
	const b = t * m;
	const root = Math.sqrt(b * b + a * room);
	return b > 0 ? room / (b + root) : (root - b) / a;
}
/** @param limits stress for each bond, MPa */
function shearFactor(problem, limits) {
	const { length, bonds, channels, axial, hoop } = problem;
	const solutions = channels.map((channel) => solveElastic(channel, bonds, length));
	const count = bonds.length === 1 ? 2 : 10;
	let best = {
		factor: Number.POSITIVE_INFINITY,
		bond: 0,
		x: length
	};
	for (let j = 0; j < bonds.length; j++) for (let i = 0; i < count; i++) {
		const x = i === count - 1 ? length : length * i / (count - 1);
		const t = axial >= 0 ? solutions[axial].thermal.shear(j, x) : 0;
		const m = axial >= 0 ? solutions[axial].mechanical.shear(j, x) : 0;
		const n = hoop >= 0 ? solutions[hoop].mechanical.shear(j, x) : 0;
		const factor = factorTo(limits[j], t, m, n);
		if (factor < best.factor) best = {
			factor,
			bond: j,
			x
		};
	}
	return best;
}
// src/model/margins/strength-clocking.ts
/**
* Where around the tube the bond is weakest once it may flow: not where it yields first. Under force,
* moment, torque and shear together the two can be tens of degrees and ten per cent of strength apart.
*/
/**
* Clockings whose mechanical shear alone is within this of the largest are followed into the plastic
* range. Thermal stress decides which end yields first, but moves the strength by less than this.
*/
const FOLLOW = 2;
/**
* Clockings at which the bond's strength can be lowest. First yield is worst where temperature adds to
* the load; a bond with room to flow gives way where the load itself is largest, at an end or in sum.
*/
function strengthClockings(state, byYield) {
	const { assembly, bonds, loadCase } = state;
	const { loads } = loadCase;
	const limits = bonds.map((bond) => bond.shearYield);
	const cold = (theta) => shearFactor(state.at(theta, 0), limits).factor;
	const candidates = byYield.map(({ theta }) => theta);
	if (clockings(assembly.flat, loads).length > 2) {
		const bySum = (theta) => 1 / Math.hypot(...state.at(theta, 0).channels.map(({ load }) => load));
		for (const at of [cold, bySum]) for (const { theta } of worstClockings(assembly.flat, loads, at)) if (candidates.every((known) => apart(known, theta) > SAME$1)) candidates.push(theta);
	}
	const factors = candidates.map(cold);
	const coldest = Math.min(...factors);
	return candidates.filter((_theta, i) => factors[i] <= coldest * FOLLOW);
}
/** Clockings closer than this are one for a first look; `refineStrength` closes in. */
const SAME$1 = .05;
const apart = (a, b) => {
	const turn = Math.abs(a - b) % (2 * Math.PI);
	return Math.min(turn, 2 * Math.PI - turn);
};
/**
* The strength's own worst clocking near the one that was found, by parabolas through three: the
* candidates are those of first yield and largest load, and the lowest strength lies a little beside.
*/
function refineStrength(state, found) {
	const { assembly, bonds, loadCase } = state;
	if (found.mode !== "adhesive-strain" || found.reached === 0) return found;
	if (clockings(assembly.flat, loadCase.loads).length <= 2) return found;
	const limits = bonds.map((bond) => bond.shearYield);
	let best = found;
	const at = (theta) => {
		const problem = state.at(theta);
		const strength = bondStrength(problem, shearFactor(problem, limits));
		if (!strength) return Number.POSITIVE_INFINITY;
		if (strength.factor < best.reached) {
			const x = strength.end === "root" ? 0 : assembly.overlap;
			best = {
				...best,
				reached: strength.factor,
				margin: strength.factor / best.asked - 1,
				part: assembly.bonds[strength.bond].name,
				place: placeOf$2(x, assembly.overlap),
				x,
				theta: (theta + 2 * Math.PI) % (2 * Math.PI),
				wholeBondFlows: strength.wholeBondFlows
			};
		}
		return strength.factor;
	};
	let center = found.theta;
	let middle = found.reached;
	for (let step = .12; step > .005; step /= 3) {
		const [before, after] = [at(center - step), at(center + step)];
		const bend = before - 2 * middle + after;
		const vertex = bend > 0 ? (before - after) / (2 * bend) * step : NaN;
		if (Math.abs(vertex) <= 2 * step) at(center + vertex);
		center = best.theta;
		middle = best.reached;
	}
	return best;
}
// src/model/margins/adhesive-modes.ts
/** Share of yield allowed to the peak shear after n cycles: min(1, C·n^−b). */
const cyclicShare = (coefficient, exponent, cycles) => Math.min(1, coefficient * cycles ** -exponent);
function adhesiveModes(state, adhesive, factors, { only, troughOfInterest = Number.POSITIVE_INFINITY } = {}) {
	const { assembly, bonds, loadCase } = state;
	const { kind, loads } = loadCase;
	const results = [];
	const wanted = (mode) => only && !only.has(mode) ? null : askedFactor(mode, kind, factors);
	const add = (mode, asked, reached, bond, x, theta, wholeBondFlows = false) => {
		if (!(reached < 1e9)) return;
		const part = assembly.bonds[bond].name;
		results.push(resultOf(state, {
			mode,
			part,
			reached,
			asked,
			x,
			theta,
			wholeBondFlows
		}));
	};
	const reachedAt = (theta, share) => shearFactor(state.at(theta), bonds.map((bond) => bond.shearYield * share));
	const worst = worstClockings(assembly.flat, loads, (theta) => reachedAt(theta, 1).factor);
	const first = worst[0];
	if (!first || !(first.factor < 1e9)) return results;
	const yieldAsked = wanted("adhesive-yield");
	if (yieldAsked !== null) {
		const { factor, bond, x } = reachedAt(first.theta, 1);
		add("adhesive-yield", yieldAsked, factor, bond, x, first.theta);
	}
	const cyclicAsked = wanted("cyclic-shear");
	if (cyclicAsked !== null && adhesive.fatigue && loadCase.cycles !== void 0) {
		const { coefficient, exponent } = adhesive.fatigue;
		const share = cyclicShare(coefficient, exponent, loadCase.cycles);
		const [low] = worstClockings(assembly.flat, loads, (theta) => reachedAt(theta, share).factor);
		const { factor, bond, x } = reachedAt(low.theta, share);
		add("cyclic-shear", cyclicAsked, factor, bond, x, low.theta);
	}
	const strainAsked = wanted("adhesive-strain");
	const troughAsked = wanted("durability-trough");
	if (strainAsked === null && troughAsked === null) return results;
	let strain = null;
	let trough = null;
	for (const theta of strengthClockings(state, worst)) {
		const problem = state.at(theta);
		const atYield = reachedAt(theta, 1);
		const strength = bondStrength(problem, atYield);
		if (!strength) continue;
		const x = strength.end === "root" ? 0 : assembly.overlap;
		if (strainAsked !== null && (!strain || strength.factor < strain[2])) strain = [
			"adhesive-strain",
			strainAsked,
			strength.factor,
			strength.bond,
			x,
			theta,
			strength.wholeBondFlows
		];
		if (troughAsked !== null) {
			const reached = troughReached(problem, atYield, strength, Math.min((1 + troughOfInterest) * troughAsked, trough?.[2] ?? Number.POSITIVE_INFINITY));
			if (!trough || reached < trough[2]) trough = [
				"durability-trough",
				troughAsked,
				reached,
				strength.bond,
				assembly.overlap / 2,
				theta
			];
		}
	}
	if (strain) add(...strain);
	if (trough) add(...trough);
	return results;
}
// src/model/joint/knockdown.ts
/** Rows of the table between which a gap lies; null at its ends and beyond. */
function gapRows(table, gap) {
	const rows = [...table].sort((a, b) => a.gap - b.gap);
	const above = rows.findIndex((row) => row.gap >= gap);
	return above > 0 ? [rows[above - 1], rows[above]] : null;
}
/** Strength at a gap over that of the table's own coupons: linear, the nearest beyond the table. */
function gapFactor(table, gap) {
	const rows = [...table].sort((a, b) => a.gap - b.gap);
	const first = rows[0];
	const last = rows[rows.length - 1];
	if (!first || !last) return {
		factor: 1,
		outside: false
	};
	const slack = 1e-9 * last.gap;
	if (gap <= first.gap) return {
		factor: first.factor,
		outside: gap < first.gap - slack
	};
	if (gap >= last.gap) return {
		factor: last.factor,
		outside: gap > last.gap + slack
	};
	const [a, b] = gapRows(rows, gap);
	const t = (gap - a.gap) / (b.gap - a.gap);
	return {
		factor: a.factor + t * (b.factor - a.factor),
		outside: false
	};
}
function ledgerAt({ knockdowns }, gap) {
	if (!knockdowns) return {
		environment: 1,
		gap: 1,
		ageing: 1,
		scatter: 1,
		left: 1,
		gapOutsideTable: false
	};
	const { environment, ageing, scatter } = knockdowns;
	const { factor, outside } = gapFactor(knockdowns.gap, gap);
	return {
		environment,
		gap: factor,
		ageing,
		scatter,
		left: environment * factor * ageing * scatter,
		gapOutsideTable: outside
	};
}
function knockedDown(state, left) {
	return {
		...state,
		shearYield: state.shearYield * left,
		plasticStrain: state.plasticStrain * left,
		peelStrength: state.peelStrength === void 0 ? void 0 : state.peelStrength * left
	};
}
const fractureAt = (fracture, left) => ({
	...fracture,
	modeI: fracture.modeI * left * left,
	modeII: fracture.modeII * left * left
});
// src/model/layered/shell.ts
/** ν13 and ν23 of carbon laminates, which few data sheets give (typical, from memory). */
const USUAL_THINNING = .3;
function plateProperties(material) {
	if (material.kind === "isotropic") {
		const { modulus, poisson, expansion } = material;
		return {
			axialModulus: modulus,
			hoopModulus: modulus,
			poisson,
			axialExpansion: expansion,
			hoopExpansion: expansion,
			throughExpansion: expansion,
			throughShearModulus: modulus / (2 * (1 + poisson)),
			shearModulus: modulus / (2 * (1 + poisson)),
			axialThinning: poisson,
			hoopThinning: poisson,
			throughModulus: modulus,
			bendingRatio: 1
		};
	}
	return {
		axialModulus: material.axialModulus,
		hoopModulus: material.hoopModulus,
		poisson: material.poisson,
		axialExpansion: material.axialExpansion,
		hoopExpansion: material.hoopExpansion,
		throughExpansion: material.throughExpansion ?? 0,
		throughShearModulus: material.throughShearModulus,
		shearModulus: material.shearModulus,
		axialThinning: USUAL_THINNING,
		hoopThinning: USUAL_THINNING,
		throughModulus: material.throughModulus ?? Number.POSITIVE_INFINITY,
		bendingRatio: material.kind === "laminate" ? material.bendingRatio : 1
	};
}
function shellOf(properties, size, face, deltaT) {
	const { axialModulus: ex, hoopModulus: et, poisson } = properties;
	const { radius, thickness, flat } = size;
	const poissonBack = poisson * et / ex;
	const room = 1 - poisson * poissonBack;
	const cxx = ex * thickness / room;
	return {
		radius,
		thickness,
		flat,
		cxx,
		cxt: poissonBack * cxx,
		ctt: et * thickness / room,
		bending: cxx * thickness * thickness / 12 * properties.bendingRatio,
		shear: properties.throughShearModulus * thickness,
		throughShear: properties.throughShearModulus,
		planeShear: properties.shearModulus * thickness,
		freeAxial: properties.axialExpansion * deltaT,
		freeHoop: properties.hoopExpansion * deltaT,
		freeHalfThickness: properties.throughExpansion * deltaT * thickness / 2,
		thinAxial: properties.axialThinning / ex,
		thinHoop: properties.hoopThinning / et,
		throughFlexibility: thickness / properties.throughModulus,
		offset: face === "both" ? 0 : face === "inner" ? thickness / 2 : -thickness / 2
	};
}
/** ε_y of a flat joint that is free to grow in width: Σ E_y·t·α_y·ΔT / Σ E_y·t, no net force. */
function commonWidthStrain(shells) {
	let force = 0;
	let stiffness = 0;
	for (const shell of shells) {
		const own = shell.ctt - shell.cxt * shell.cxt / shell.cxx;
		force += own * shell.freeHoop;
		stiffness += own;
	}
	return force / stiffness;
}
// src/model/layered/of-joint.ts
/** Poisson's ratio of the adhesive from its two moduli, kept inside what a solid can have. */
function adhesivePoisson({ modulus, shearModulus }) {
	return Math.min(LARGEST_POISSON, Math.max(0, modulus / (2 * shearModulus) - 1));
}
/** E′ grows without bound towards 0.5; moduli that ask for more do not fit each other. */
const LARGEST_POISSON = .45;
/** E′ = E(1−ν)/((1+ν)(1−2ν)): modulus of a layer that its neighbours keep from contracting, MPa. */
function constrainedModulus(adhesive) {
	const nu = adhesivePoisson(adhesive);
	return adhesive.modulus * (1 - nu) / ((1 + nu) * (1 - 2 * nu));
}
/**
* @param deltaT service less stress-free temperature, K
* @param adhesives state of the adhesive in each bond
* @param edge loads of a flat single lap; left out for all others
*/
function layeredLap(assembly, adhesives, deltaT, edge) {
	const { flat, overlap, bonds } = assembly;
	const order = inOrder(assembly);
	const layers = bonds.map((bond, j) => {
		const adhesive = adhesives[j];
		const nu = adhesivePoisson(adhesive);
		return {
			radius: flat ? bond.width : bond.radius,
			gap: bond.gap,
			shearModulus: adhesive.shearModulus,
			constrainedModulus: constrainedModulus(adhesive),
			contraction: nu / (1 - nu),
			planeModulus: adhesive.modulus / (1 - nu * nu),
			poisson: nu,
			freeStrain: adhesive.expansion * deltaT,
			freeOpening: deltaT * bond.gap * adhesive.expansion * (1 + nu) / (1 - nu),
			shearYield: adhesive.shearYield
		};
	});
	const uniform = order.every(({ part }) => part.root.thickness === part.mouth.thickness);
	const shellAt = ({ part, face }, t) => {
		const { root, mouth } = part;
		const mix = (a, b) => a + t * (b - a);
		const size = {
			thickness: mix(root.thickness, mouth.thickness),
			radius: flat ? bonds[0].width : mix(root.meanRadius, mouth.meanRadius),
			flat
		};
		return shellOf(plateProperties(part.material), size, face, deltaT);
	};
	const sectionAt = (x) => ({
		shells: order.map((wall) => shellAt(wall, x / overlap)),
		bonds: layers,
		shearFactor: 1
	});
	const held = uniform ? sectionAt(0) : null;
	return {
		length: overlap,
		uniform,
		sectionAt: (x) => held ?? sectionAt(x),
		...wallEnds(assembly, order, deltaT, edge)
	};
}
/** Walls from the inside outward, with the face each is bonded on. */
function inOrder({ tube, outers, bonds, flat }) {
	const [first, second] = outers;
	if (second) return [
		{
			part: first,
			face: "outer"
		},
		{
			part: tube,
			face: "both"
		},
		{
			part: second,
			face: "inner"
		}
	];
	return flat || bonds[0].radius > tube.root.meanRadius ? [{
		part: tube,
		face: "outer"
	}, {
		part: first,
		face: "inner"
	}] : [{
		part: first,
		face: "outer"
	}, {
		part: tube,
		face: "inner"
	}];
}
/** How the layers stand to the tube and the outer adherends of the assembly. */
function layerOrder(assembly) {
	const order = inOrder(assembly);
	const tube = order.findIndex(({ part }) => part === assembly.tube);
	return {
		signs: assembly.bonds.map((_bond, j) => tube <= j ? -1 : 1),
		layers: [assembly.tube, ...assembly.outers].map((part) => order.findIndex((layer) => layer.part === part))
	};
}
/** From the middle of a flat double lap's strip to the middle of its strap. */
function flatDistance({ tube, outers, bonds }, layer) {
	const strap = layer === 0 ? 0 : 1;
	return (tube.root.thickness + outers[strap].root.thickness) / 2 + bonds[strap].gap;
}
function wallEnds(assembly, order, deltaT, edge) {
	const { flat, outers, bonds, tube } = assembly;
	const unit = flat ? 1 : 1 / (2 * Math.PI);
	const single = bonds.length === 1;
	const ends = (ofTube, ofOuter) => order.map(({ part }, i) => {
		if (part === tube) return ofTube;
		if (ofOuter) return ofOuter;
		const { hoopExpansion } = plateProperties(part.material);
		const out = flat ? (i === 0 ? -1 : 1) * flatDistance(assembly, i) : part.root.meanRadius;
		return {
			kind: "clamped",
			growth: hoopExpansion * deltaT * out
		};
	});
	if (flat && single && outers.length === 1) {
		const { moment, shear } = edge ?? {
			moment: 0,
			shear: 0
		};
		return {
			root: ends({ kind: "free" }, {
				kind: "clamped",
				growth: 0
			}),
			mouth: ends({
				kind: "cut",
				n: 1,
				q: -shear,
				m: -moment
			}, { kind: "free" })
		};
	}
	return {
		root: ends({ kind: "free" }, single ? {
			kind: "run-out",
			pull: "held"
		} : null),
		mouth: ends({
			kind: "run-out",
			pull: unit
		}, { kind: "free" })
	};
}
// src/model/joint/types.ts
function axialProperties(material) {
	if (material.kind === "isotropic") {
		const shearModulus = material.modulus / (2 * (1 + material.poisson));
		return {
			modulus: material.modulus,
			shearModulus,
			throughShearModulus: shearModulus,
			expansion: material.expansion
		};
	}
	return {
		modulus: material.axialModulus,
		shearModulus: material.shearModulus,
		throughShearModulus: material.throughShearModulus,
		expansion: material.axialExpansion
	};
}
// src/model/joint/local-problem.ts
function member(part, stiffnessOf, strain) {
	const stiffness = stiffnessOf(part.root);
	if (part.root.thickness === part.mouth.thickness) return {
		stiffness,
		thermalStrain: strain
	};
	return {
		stiffness,
		thermalStrain: strain,
		taper: {
			middle: stiffnessOf(part.middle),
			mouth: stiffnessOf(part.mouth)
		}
	};
}
function loadWeights(assembly, loads, theta) {
	if (assembly.flat) return {
		force: 1,
		moment: 0
	};
	const force = Math.abs(loads.force);
	const moment = Math.abs(2 * loads.moment * Math.cos(theta) / assembly.referenceRadius);
	if (moment <= 1e-12 * force || moment === 0) return {
		force: 1,
		moment: 0
	};
	return {
		force: force / (force + moment),
		moment: moment / (force + moment)
	};
}
function axialChannel(assembly, load, weights, deltaT) {
	const radius = assembly.referenceRadius;
	const asMember = (part) => {
		const { modulus, expansion } = axialProperties(part.material);
		const stiffnessOf = ({ area, secondMoment }) => weights.moment === 0 ? modulus * area : modulus / (weights.force / area + weights.moment * radius * radius / (2 * secondMoment));
		return member(part, stiffnessOf, expansion * deltaT);
	};
	return {
		load,
		tube: asMember(assembly.tube),
		outers: assembly.outers.map(asMember),
		levers: assembly.bonds.map((bond) => assembly.flat ? 1 : weights.force + weights.moment * bond.radius / radius)
	};
}
function hoopChannel(assembly, load) {
	const radius = assembly.referenceRadius;
	const asMember = (part) => {
		const { shearModulus } = axialProperties(part.material);
		return member(part, ({ polarMoment }) => shearModulus * polarMoment / radius ** 2, 0);
	};
	return {
		load,
		tube: asMember(assembly.tube),
		outers: assembly.outers.map(asMember),
		levers: assembly.bonds.map((bond) => bond.radius / radius)
	};
}
/**
* A circumferential load this far below the axial one changes the resultant by less than 1e-8: the
* channel is left at rest, and the exact one-channel solution holds.
*/
const AT_REST = 1e-4;
/** Loads this far below what the bond carries at most are none: no factor on them means anything. */
const NO_LOAD = 1e-10;
/** @param theta clocking from the plane of bending, radians */
function localProblem(assembly, bonds, loads, theta, deltaT) {
	const radius = assembly.referenceRadius;
	const channels = [];
	const along = assembly.flat ? loads.force : loads.force + 2 * loads.moment * Math.cos(theta) / radius;
	const around = assembly.flat ? 0 : loads.torque / radius + 2 * loads.shear * Math.sin(theta);
	const flow = bonds.reduce((sum, bond) => sum + bond.width * bond.shearYield * assembly.overlap, 0);
	const axialLoad = Math.abs(along) <= NO_LOAD * flow ? 0 : along;
	const hoopLoad = Math.abs(around) <= Math.max(AT_REST * Math.abs(axialLoad), NO_LOAD * flow) ? 0 : around;
	const axial = axialChannel(assembly, axialLoad, loadWeights(assembly, loads, theta), deltaT);
	const moved = axialLoad !== 0 || axial.outers.some((outer) => outer.thermalStrain !== axial.tube.thermalStrain);
	if (moved || hoopLoad === 0) channels.push(axial);
	if (hoopLoad !== 0) channels.push(hoopChannel(assembly, hoopLoad));
	return {
		length: assembly.overlap,
		bonds,
		channels,
		axial: moved || hoopLoad === 0 ? 0 : -1,
		hoop: hoopLoad !== 0 ? channels.length - 1 : -1
	};
}
// src/model/layered/fields.ts
/** Both ends exactly, dense where peel turns. */
function fieldStations(length, count = 60) {
	const stations = [];
	for (let i = 0; i <= count; i++) {
		const s = 2 * (i / count) - 1;
		stations.push(length * (1 + .3 * s + .7 * (Math.sign(s) * (1 - (1 - Math.abs(s)) ** 3))) / 2);
	}
	stations[count] = length;
	return stations;
}
function fieldsOf(solution, order) {
	const x = fieldStations(solution.lap.length);
	return {
		x,
		unit: partOf(solution, order, x, 1, 0),
		thermal: partOf(solution, order, x, 0, 1)
	};
}
const partOf = (solution, order, x, load, share) => gather(solution.along(x, load, share), order, x.length);
function gather(points, order, count) {
	const empty = () => new Float64Array(count);
	const bonds = order.signs.map(() => ({
		shear: empty(),
		peel: empty()
	}));
	const walls = order.layers.map(() => ({
		axial: empty(),
		hoop: empty(),
		moment: empty()
	}));
	points.forEach(({ stresses, forces }, i) => {
		bonds.forEach((bond, j) => {
			bond.shear[i] = order.signs[j] * stresses.shear[j];
			bond.peel[i] = stresses.peel[j];
		});
		walls.forEach((wall, k) => {
			const force = forces[order.layers[k]];
			wall.axial[i] = force.axial;
			wall.hoop[i] = force.hoop;
			wall.moment[i] = force.moment;
		});
	});
	return {
		bonds,
		walls
	};
}
/** Amplitudes at cos θ per N·mm of bending moment, at stations. */
const bentPart = (solution, order, x) => gather(solution.along(x), order, x.length);
// src/model/margins/bond-fields.ts
/**
* Peel and shear of the bonds at a clocking by the layered model, each as a held part (temperature)
* and a part that grows with the load factor: that of the force, the same all round, and that of the
* moment, the first harmonic.
*/
/**
* Force and moment at θ as one load on the whole tube, N: P = F + c·2M·cosθ/R_t.
* @param cover c: 1 for the line load at the tube's mean radius, or that of a place (`coverAt`)
*/
function pullAt({ assembly, loadCase }, theta, cover = 1) {
	const { force, moment } = loadCase.loads;
	if (assembly.flat) return force;
	return force + cover * 2 * moment * Math.cos(theta) / assembly.tube.root.meanRadius;
}
const LEAST_COVER = .5;
const MOST_COVER = 1.5;
/**
* How much more (or less) a moment does at a place than its line load would if it were the same all
* round: c = (stress per moment)·R_t/2 over the stress per force.
*/
function coverAt({ assembly, layered }, what, bond, x) {
	const bent = layered.bent([x]);
	if (!bent) return 1;
	const { stresses } = layered.solution(0).at(x, 1, 0);
	const byForce = what === "peel" ? stresses.peel[bond] : layered.order.signs[bond] * stresses.shear[bond];
	const cover = bent.bonds[bond][what][0] * assembly.tube.root.meanRadius / (2 * byForce);
	return Number.isFinite(cover) ? cover : 1;
}
/** The same, kept to where a load that is the same all round can stand for the moment. */
const boundedCover = (...place) => Math.min(Math.max(coverAt(...place), LEAST_COVER), MOST_COVER);
/**
* Hoop shear per load factor of bond j at station i of the fields, by the shear lag of torque and
* transverse shear.
*/
function hoopShear({ assembly, bonds, loadCase }) {
	const { torque, shear } = loadCase.loads;
	if (assembly.flat || torque === 0 && shear === 0) return () => 0;
	const { mechanical } = solveElastic(hoopChannel(assembly, 1), bonds, assembly.overlap);
	const stations = fieldStations(assembly.overlap);
	const unit = bonds.map((_bond, j) => stations.map((x) => mechanical.shear(j, x)));
	return (j, i, theta) => unit[j][i] * (torque / assembly.referenceRadius + 2 * shear * Math.sin(theta));
}
function bondFields(state) {
	const { assembly, bonds, layered, loadCase } = state;
	const x = fieldStations(assembly.overlap);
	const around = hoopShear(state);
	const sample = {
		bond: 0,
		x: 0,
		peelHeld: 0,
		peelLoad: 0,
		shearHeld: 0,
		shearLoad: 0,
		around: 0
	};
	return { visit: (theta, factor, see) => {
		const { force, moment } = loadCase.loads;
		const turned = assembly.flat ? 0 : moment * Math.cos(theta);
		const bent = turned === 0 ? null : layered.bent();
		const { unit, thermal } = layered.fields(factor * force);
		for (let j = 0; j < bonds.length; j++) {
			const [load, held] = [unit.bonds[j], thermal.bonds[j]];
			const bend = bent?.bonds[j];
			sample.bond = j;
			for (let i = 0; i < x.length; i++) {
				sample.x = x[i];
				sample.peelHeld = held.peel[i];
				sample.peelLoad = load.peel[i] * force + (bend ? bend.peel[i] * turned : 0);
				sample.shearHeld = held.shear[i];
				sample.shearLoad = load.shear[i] * force + (bend ? bend.shear[i] * turned : 0);
				sample.around = around(j, i, theta);
				see(sample);
			}
		}
	} };
}
// src/model/margins/capped-factor.ts
/**
* The load factor at which peel ends the joint when the bonds flow on the way: found on the layered
* model with its shear capped at yield, from the elastic factor upward.
*/
const TOLERANCE = 1e-6;
/** How near to the flow of the whole bond states are looked for. */
const CLOSE = .001;
/**
* @param interest factors at or above this need not be found
* @returns null when the factor is not below `interest`
*/
function cappedReach(state, reach, interest) {
	const elastic = {
		...reach,
		shearFirst: false
	};
	if (reach.factor === 0) return elastic;
	if (reach.factor >= reach.shearStrength) return shearDecides$1(reach);
	const useAt = uses(state, reach);
	let low = reach.factor;
	let high = Math.min(reach.shearStrength, interest);
	let far = useAt(high);
	for (let beyond = high; !far && beyond - low > CLOSE * beyond;) {
		high = (low + beyond) / 2;
		const use = useAt(high);
		if (!use) beyond = high;
		else if (use.share >= 1) far = use;
		else low = high;
	}
	if (!far || far.share < 1) return high < interest || reach.shearStrength <= interest ? shearDecides$1(reach) : null;
	const first = useAt(low);
	if (!first) return elastic;
	if (first.share >= .999999) return at(low, first);
	const guess = low + (high - low) * (1 - first.share) / (far.share - first.share);
	const middle = useAt(guess);
	if (middle) {
		if (middle.share < 1) low = guess;
		else high = guess;
	}
	const factor = findRoot((value) => (useAt(value)?.share ?? 2) - 1, low, high, TOLERANCE * high);
	const found = useAt(factor);
	return found ? at(factor, found) : elastic;
}
const at = (factor, { bond, x }) => ({
	factor,
	bond,
	x,
	shearFirst: false
});
const shearDecides$1 = (reach) => ({
	factor: Math.max(reach.factor, reach.shearStrength),
	bond: reach.bond,
	x: reach.x,
	shearFirst: true
});
/** The highest use of the mode over bonds and stations at a factor; null without a capped state. */
function uses(state, { theta, judge, bond, x: x0 }) {
	const { assembly, bonds, layered } = state;
	const aroundAt = hoopShear(state);
	const pull = pullAt(state, theta, boundedCover(state, "peel", bond, x0));
	const stations = fieldStations(assembly.overlap);
	let known = null;
	return (factor) => {
		const load = factor * pull;
		const capped = layered.capped(load);
		if (!capped) return null;
		if (known?.load === load) return known.use;
		let worst = {
			share: 0,
			bond: 0,
			x: 0
		};
		capped.solution.along(stations, load, 1).forEach(({ stresses }, i) => {
			const x = stations[i];
			stresses.peel.forEach((peel, j) => {
				const around = aroundAt(j, i, theta) * factor;
				const share = judge({
					bond: j,
					peel,
					shear: Math.min(Math.hypot(stresses.shear[j], around), bonds[j].shearYield)
				});
				if (share > worst.share) worst = {
					share,
					bond: j,
					x
				};
			});
		});
		known = {
			load,
			use: worst
		};
		return worst;
	};
}
// src/model/margins/peel-factor.ts
/** Load factors at which peel, alone and with shear, reaches its limit, temperature held fixed. */
/** σ_held + λ·σ_load = strength; compression is no peel. */
function peelFactor({ peelHeld, peelLoad }, strength) {
	if (peelHeld >= strength) return 0;
	return peelLoad <= 0 ? Number.POSITIVE_INFINITY : (strength - peelHeld) / peelLoad;
}
/** (⟨σ⟩/peel)² + (τ/shear)² = 1, ⟨σ⟩ = σ where it opens, else 0; τ the resultant. */
function peelShearFactor(sample, peel, shear) {
	const { peelHeld: p0, peelLoad: p1, shearHeld: s0, shearLoad: s1, around: n } = sample;
	const sheared = factorTo(shear, s0, s1, n);
	const p = [p0 / peel, p1 / peel];
	const s = [
		s0 / shear,
		s1 / shear,
		n / shear
	];
	if ((p0 > 0 ? p[0] * p[0] : 0) + s[0] * s[0] - 1 >= 0) return 0;
	if (p0 <= 0 && (p1 <= 0 || p0 + sheared * p1 <= 0)) return sheared;
	const a = p[1] * p[1] + s[1] * s[1] + s[2] * s[2];
	const b = p[0] * p[1] + s[0] * s[1];
	const whole = p[0] * p[0] + s[0] * s[0] - 1;
	const root = Math.sqrt(Math.max(b * b - a * whole, 0));
	const both = a === 0 ? Number.POSITIVE_INFINITY : b > 0 ? -whole / (b + root) : (root - b) / a;
	return p0 + both * p1 >= 0 ? both : sheared;
}
/** Energy release rates at a free end of the bond: G_I = h·⟨σ⟩²/2E′, G_II = h·τ²/2G, N/mm. */
function releaseRates(sample, factor, { gap, normal, shear }) {
	const peel = Math.max(sample.peelHeld + factor * sample.peelLoad, 0);
	const along = sample.shearHeld + factor * sample.shearLoad;
	const around = factor * sample.around;
	return {
		modeI: gap * peel * peel / (2 * normal),
		modeII: gap * (along * along + around * around) / (2 * shear)
	};
}
const FARTHEST = 0xe8d4a51000;
/** (G_I/G_Ic)^m + (G_II/G_IIc)^m = 1. */
function fractureFactor(sample, stiffness, limit) {
	const over = (factor) => {
		const { modeI, modeII } = releaseRates(sample, factor, stiffness);
		return (modeI / limit.modeI) ** limit.exponent + (modeII / limit.modeII) ** limit.exponent - 1;
	};
	if (over(0) >= 0) return 0;
	let high = 1;
	while (over(high) < 0) {
		high *= 4;
		if (high > FARTHEST) return Number.POSITIVE_INFINITY;
	}
	return findRoot(over, 0, high, 1e-12 * high);
}
// src/model/margins/peel-modes.ts
/**
* Modes that the layered model finds in the bonds: peel, peel with shear, between plies, fracture.
* docs/method.md, margins.
*
* Peel and failure between plies end the joint: they are judged with the shear capped at yield, where
* the elastic model overstates peel. First yield under both, and fracture energies, are elastic.
*/
function peelModes(state, adhesive, factors, options) {
	const { assembly, adhesives, ledgers, bonds, loadCase } = state;
	const fields = bondFields(state);
	const results = [];
	const judge = (mode, factorOf, capped) => {
		if (options.only && !options.only.has(mode)) return;
		const asked = askedFactor(mode, loadCase.kind, factors);
		if (asked === null) return;
		const elastic = worst(state, fields, factorOf);
		if (!elastic || !(elastic.factor < 1e9)) return;
		const interest = options.ofInterest?.(mode) ?? Number.POSITIVE_INFINITY;
		if (elastic.factor / asked - 1 >= interest) return;
		const reach = capped ? cappedReach(state, {
			...elastic,
			judge: capped,
			shearStrength: options.shearStrength
		}, (1 + interest) * asked) : {
			...elastic,
			shearFirst: false
		};
		if (!reach) return;
		results.push(resultOf(state, {
			mode,
			part: assembly.bonds[reach.bond].name,
			reached: reach.factor,
			asked,
			x: reach.x,
			theta: elastic.theta,
			wholeBondFlows: false,
			shearFirst: reach.shearFirst
		}));
	};
	const strengths = adhesives.map(({ peelStrength }) => peelStrength);
	if (strengths.every((strength) => strength !== void 0)) {
		const peel = (j) => strengths[j];
		judge("adhesive-peel", (sample) => peelFactor(sample, peel(sample.bond)), ({ bond, peel: stress }) => stress / peel(bond));
		judge("peel-shear", (sample) => peelShearFactor(sample, peel(sample.bond), bonds[sample.bond].shearYield), null);
	}
	const faces = interlaminarOf(state);
	if (faces.some((ofBond) => ofBond.length > 0)) judge("interlaminar", interlaminarFactor(faces), ({ bond, peel, shear }) => interlaminarUse(faces[bond], peel, shear));
	const { fracture } = adhesive;
	if (fracture) {
		const limits = ledgers.map(({ left }) => fractureAt(fracture, left));
		const stiffness = adhesives.map((own, j) => ({
			gap: assembly.bonds[j].gap,
			normal: constrainedModulus(own),
			shear: own.shearModulus
		}));
		judge("fracture", (sample) => sample.x === 0 || sample.x === assembly.overlap ? fractureFactor(sample, stiffness[sample.bond], limits[sample.bond]) : Number.POSITIVE_INFINITY, null);
	}
	return results;
}
/** The faces of each bond. */
const interlaminarOf = ({ assembly }) => assembly.bonds.map((_bond, j) => [assembly.tube, assembly.outers[j]].flatMap(({ material }) => {
	const strengths = interlaminarStrengths(material);
	return strengths ? [strengths] : [];
}));
const interlaminarFactor = (faces) => (sample) => {
	let lowest = Number.POSITIVE_INFINITY;
	for (const { tension, shear } of faces[sample.bond]) lowest = Math.min(lowest, peelShearFactor(sample, tension, shear));
	return lowest;
};
/** Stress over strength on the face that is used most; 1 where plies part. */
function interlaminarUse(faces, peel, shear) {
	let most = 0;
	for (const face of faces) most = Math.max(most, Math.hypot(Math.max(peel, 0) / face.tension, shear / face.shear));
	return most;
}
function interlaminarStrengths(material) {
	if (material.kind === "isotropic") return null;
	const { interlaminarTension: tension, interlaminarShear: shear } = material;
	return tension === void 0 || shear === void 0 ? null : {
		tension,
		shear
	};
}
/** The lowest factor over bonds, stations and clockings; the last digits of a flat lap by rounds. */
function worst(state, fields, factorOf) {
	const { assembly, layered, loadCase } = state;
	const at = (theta, bendsAt) => {
		let found = {
			factor: Number.POSITIVE_INFINITY,
			bond: 0,
			x: 0,
			theta
		};
		fields.visit(theta, bendsAt, (sample) => {
			const factor = factorOf(sample);
			if (factor < found.factor) found = {
				factor,
				bond: sample.bond,
				x: sample.x,
				theta
			};
		});
		return found;
	};
	if (layered.bendsWithLoad) return atOwnLoad((factor) => at(0, factor));
	const [lowest] = worstClockings(assembly.flat, loadCase.loads, (theta) => at(theta, 1).factor);
	return lowest ? at(lowest.theta, 1) : null;
}
const ROUNDS$1 = 60;
/** Edge moments fall as the load grows: the factor is sought at the load that it itself makes. */
function atOwnLoad(at) {
	let found = at(1);
	for (let round = 0; round < ROUNDS$1; round++) {
		if (!(found.factor < 1e9) || found.factor === 0) return found;
		const next = at(found.factor);
		const moved = Math.abs(next.factor - found.factor);
		found = next;
		if (moved <= 1e-9 * next.factor) break;
	}
	return found;
}
// src/model/laminate/plane.ts
const zeroPlane = {
	c11: 0,
	c12: 0,
	c22: 0,
	c16: 0,
	c26: 0,
	c66: 0
};
/** p + factor·q */
const addPlane = (p, q, factor) => ({
	c11: p.c11 + factor * q.c11,
	c12: p.c12 + factor * q.c12,
	c22: p.c22 + factor * q.c22,
	c16: p.c16 + factor * q.c16,
	c26: p.c26 + factor * q.c26,
	c66: p.c66 + factor * q.c66
});
/** v + factor·w */
const addTriple = (v, w, factor) => [
	v[0] + factor * w[0],
	v[1] + factor * w[1],
	v[2] + factor * w[2]
];
const dot$1 = (v, w) => v[0] * w[0] + v[1] * w[1] + v[2] * w[2];
const times = (p, [x, y, s]) => [
	p.c11 * x + p.c12 * y + p.c16 * s,
	p.c12 * x + p.c22 * y + p.c26 * s,
	p.c16 * x + p.c26 * y + p.c66 * s
];
/** By cofactors: the matrices of a laminate are well conditioned (about E1/G12). */
function invertPlane({ c11, c12, c22, c16, c26, c66 }) {
	const k11 = c22 * c66 - c26 * c26;
	const k12 = c16 * c26 - c12 * c66;
	const k16 = c12 * c26 - c22 * c16;
	const determinant = c11 * k11 + c12 * k12 + c16 * k16;
	return {
		c11: k11 / determinant,
		c12: k12 / determinant,
		c22: (c11 * c66 - c16 * c16) / determinant,
		c16: k16 / determinant,
		c26: (c12 * c16 - c11 * c26) / determinant,
		c66: (c11 * c22 - c12 * c12) / determinant
	};
}
/** Rows of a plane, for products that are not symmetric. */
const rowsOf = ({ c11, c12, c22, c16, c26, c66 }) => [
	[
		c11,
		c12,
		c16
	],
	[
		c12,
		c22,
		c26
	],
	[
		c16,
		c26,
		c66
	]
];
/** Cosine and sine of degrees, exact at multiples of 45°: no stray 16 or 26 term from rounding. */
function turnBy(degrees) {
	const turn = degrees % 360;
	if (turn % 45 === 0) {
		const eighth = (turn / 45 + 8) % 8;
		const at = (i) => [
			0,
			Math.SQRT1_2,
			1,
			Math.SQRT1_2
		][i % 4] * (i < 4 ? 1 : -1) + 0;
		return {
			cos: at((eighth + 2) % 8),
			sin: at(eighth)
		};
	}
	const angle = turn * Math.PI / 180;
	return {
		cos: Math.cos(angle),
		sin: Math.sin(angle)
	};
}
const turnBack = ({ cos, sin }) => ({
	cos,
	sin: -sin
});
/** Strain in ply axes to strain in laminate axes, the ply's 1 lying at the turn from x. */
function turnStrain([e1, e2, g12], { cos, sin }) {
	const cc = cos * cos;
	const ss = sin * sin;
	const cs = cos * sin;
	return [
		cc * e1 + ss * e2 - cs * g12,
		ss * e1 + cc * e2 + cs * g12,
		2 * cs * (e1 - e2) + (cc - ss) * g12
	];
}
// src/model/laminate/ply.ts
/**
* The unidirectional ply: 1 along the fibres, 2 across them in the plane, 3 through the thickness.
* Transversely isotropic: E3 = E2, G13 = G12, ν13 = ν12, α3 = α2, ν23 = E2/(2·G23) − 1.
* MPa, mm, 1/K; strengths are positive numbers, compressive ones too.
*/
/** ν21, by the symmetry of the compliance: ν21/E2 = ν12/E1. */
const minorPoisson = (ply) => ply.poisson * ply.transverseModulus / ply.axialModulus;
/** ν23 of a transversely isotropic ply. */
const transversePoisson = (ply) => ply.transverseModulus / (2 * ply.transverseShearModulus) - 1;
/**
* Plane-stress stiffness Q in ply axes:
* Q11 = E1/(1 − ν12·ν21), Q22 = E2/(1 − ν12·ν21), Q12 = ν12·Q22, Q66 = G12.
* @param minor ν21; given only to follow a source that rounds it
*/
function reducedStiffness(ply, minor = minorPoisson(ply)) {
	const restraint = 1 - ply.poisson * minor;
	const c22 = ply.transverseModulus / restraint;
	return {
		c11: ply.axialModulus / restraint,
		c12: ply.poisson * c22,
		c22,
		c16: 0,
		c26: 0,
		c66: ply.shearModulus
	};
}
/** Q̄: the stiffness Q of an orthotropic ply seen in laminate axes. */
function turnStiffness(q, { cos, sin }) {
	const cc = cos * cos;
	const ss = sin * sin;
	const cs = cos * sin;
	const mixed = q.c12 + 2 * q.c66;
	const along = q.c11 - mixed;
	const across = mixed - q.c22;
	return {
		c11: q.c11 * cc * cc + 2 * mixed * cc * ss + q.c22 * ss * ss,
		c22: q.c11 * ss * ss + 2 * mixed * cc * ss + q.c22 * cc * cc,
		c12: (q.c11 + q.c22 - 4 * q.c66) * cc * ss + q.c12 * (cc * cc + ss * ss),
		c66: (q.c11 + q.c22 - 2 * q.c12 - 2 * q.c66) * cc * ss + q.c66 * (cc * cc + ss * ss),
		c16: cs * (along * cc + across * ss),
		c26: cs * (along * ss + across * cc)
	};
}
/** Free expansion in ply axes, 1/K. */
const expansionOf = (ply) => [
	ply.axialExpansion,
	ply.transverseExpansion,
	0
];
/**
* In-plane strain in ply axes per unit stress σ3: (−ν13/E1, −ν23/E2, 0). By symmetry also the
* through-thickness strain per unit σ1, σ2, τ12.
*/
const throughCompliance = (ply) => [
	-ply.poisson / ply.axialModulus,
	-transversePoisson(ply) / ply.transverseModulus,
	0
];
const positive = [
	"axialModulus",
	"transverseModulus",
	"shearModulus",
	"transverseShearModulus",
	"thickness",
	"tensileStrength",
	"compressiveStrength",
	"transverseTensileStrength",
	"transverseCompressiveStrength",
	"shearStrength",
	"interlaminarTension",
	"interlaminarShear"
];
/**
* Refuses a ply that could not exist: its strain energy must be positive for any strain, which asks
* ν12² < E1/E2 and, transversely isotropic, −1 < ν23 < 1 − 2·ν12·ν21.
* @throws ModelError naming the field
*/
function checkPly(ply) {
	for (const field of positive) if (!(ply[field] > 0 && Number.isFinite(ply[field]))) throw new ModelError(field, `The ply's ${field} must be above zero.`);
	for (const field of [
		"poisson",
		"axialExpansion",
		"transverseExpansion"
	]) if (!Number.isFinite(ply[field])) throw new ModelError(field, `The ply's ${field} is missing.`);
	const coupling = ply.poisson * minorPoisson(ply);
	if (coupling >= 1) throw new ModelError("poisson", `No material has this ν12 with these moduli: it stays below √(E1/E2) = ${Math.sqrt(ply.axialModulus / ply.transverseModulus).toPrecision(3)}.`);
	const most = 1 - 2 * coupling;
	if (transversePoisson(ply) >= most) {
		const least = ply.transverseModulus / (2 * (1 + most));
		throw new ModelError("transverseShearModulus", most > -1 ? `G23 is too low for this E2: transverse isotropy asks for more than ${least.toPrecision(3)} MPa.` : "These moduli and this ν12 belong to no material, whatever G23 is.");
	}
}
// src/model/laminate/stack.ts
/**
* Classical lamination theory: a stack of plies from the inside to the outside, its stiffness
* N = A·ε + B·κ − N_T·ΔT, M = B·ε + D·κ − M_T·ΔT, and its strains. z runs outward from the middle
* surface; the strain at z is ε + z·κ. Plane walls: valid for R/t above about 10.
*/
/**
* Plies of one material at these angles, with their own thickness, or scaled evenly to the wall.
* @throws ModelError when there is no ply or no wall
*/
function makeStack(ply, angles, wall) {
	if (angles.length === 0) throw new ModelError("stack", "The stack has no ply.");
	if (angles.some((angle) => !Number.isFinite(angle))) throw new ModelError("stack", "A ply of the stack has no angle.");
	if (wall !== void 0 && !(wall > 0 && Number.isFinite(wall))) throw new ModelError("wall", "The wall must be thicker than zero.");
	const thickness = wall === void 0 ? ply.thickness : wall / angles.length;
	return { plies: angles.map((angle) => ({
		ply,
		angle,
		thickness
	})) };
}
const thicknessOf = ({ plies }) => plies.reduce((sum, { thickness }) => sum + thickness, 0);
/**
* Height of each ply's middle, inside to outside. Half the difference of what lies below and above,
* so that a symmetric stack has exactly opposite heights.
*/
function plyHeights({ plies }) {
	const n = plies.length;
	const below = new Array(n).fill(0);
	const above = new Array(n).fill(0);
	for (let k = 1; k < n; k++) {
		below[k] = below[k - 1] + plies[k - 1].thickness;
		above[n - 1 - k] = above[n - k] + plies[n - k].thickness;
	}
	return below.map((low, k) => (low - above[k]) / 2);
}
/** Ply numbers from both faces inward, so that the terms of a symmetric stack cancel to zero. */
function* fromFaces(n) {
	for (let k = 0; k < n / 2; k++) {
		yield k;
		if (k !== n - 1 - k) yield n - 1 - k;
	}
}
/** A = Σ Q̄·t, B = Σ Q̄·t·z, D = Σ Q̄·(t·z² + t³/12), z the middle of each ply. */
function stiffnessOf$1(stack) {
	const heights = plyHeights(stack);
	let a = zeroPlane;
	let b = zeroPlane;
	let d = zeroPlane;
	let thermalForce = [
		0,
		0,
		0
	];
	let thermalMoment = [
		0,
		0,
		0
	];
	for (const k of fromFaces(stack.plies.length)) {
		const { ply, angle, thickness: t } = stack.plies[k];
		const z = heights[k];
		const turn = turnBy(angle);
		const q = turnStiffness(reducedStiffness(ply), turn);
		const thermal = times(q, turnStrain(expansionOf(ply), turn));
		a = addPlane(a, q, t);
		b = addPlane(b, q, t * z);
		d = addPlane(d, q, t * z * z + t ** 3 / 12);
		thermalForce = addTriple(thermalForce, thermal, t);
		thermalMoment = addTriple(thermalMoment, thermal, t * z);
	}
	return {
		thickness: thicknessOf(stack),
		a,
		b,
		d,
		thermalForce,
		thermalMoment
	};
}
// src/model/laminate/first-ply.ts
/**
* First-ply failure: the factor on the load at which the first ply reaches its criterion, the
* thermal stress held fixed. Strains are those of the whole wall (mid-surface and curvature, with
* z outward); a ply's stress is Q·(strain of the wall in ply axes − α·ΔT), so that the stress which
* plies of different directions lock into each other on cooling is in it.
*
*   Tsai-Wu: F1·σ1 + F2·σ2 + F11·σ1² + F22·σ2² + F66·τ12² + 2·F12·σ1·σ2 = 1,
*     F1 = 1/Xt − 1/Xc, F11 = 1/(Xt·Xc), F2 and F22 likewise with Y, F66 = 1/S²,
*     F12 = −½√(F11·F22) by common practice: it is rarely measured.
*   Maximum strain: −Xc/E1 ≤ ε1 ≤ Xt/E1, −Yc/E2 ≤ ε2 ≤ Yt/E2, |γ12| ≤ S/G12, on ε − α·ΔT.
*/
function tsaiWuOf(ply) {
	const c11 = 1 / (ply.tensileStrength * ply.compressiveStrength);
	const c22 = 1 / (ply.transverseTensileStrength * ply.transverseCompressiveStrength);
	return {
		linear: [
			1 / ply.tensileStrength - 1 / ply.compressiveStrength,
			1 / ply.transverseTensileStrength - 1 / ply.transverseCompressiveStrength,
			0
		],
		square: {
			c11,
			c22,
			c12: -Math.sqrt(c11 * c22) / 2,
			c16: 0,
			c26: 0,
			c66: 1 / ply.shearStrength ** 2
		}
	};
}
/** Left side of the Tsai-Wu criterion: 1 at failure. */
function tsaiWuIndex(ply, stress) {
	const { linear, square } = tsaiWuOf(ply);
	return dot$1(linear, stress) + dot$1(stress, times(square, stress));
}
/** Factor on `load` at which `fixed` + factor·`load` reaches the criterion. */
function tsaiWuFactor({ linear, square }, fixed, load) {
	const here = times(square, fixed);
	const room = 1 - dot$1(linear, fixed) - dot$1(fixed, here);
	if (room <= 0) return 0;
	const a = dot$1(load, times(square, load));
	const b = dot$1(linear, load) + 2 * dot$1(load, here);
	const root = Math.sqrt(b * b + 4 * a * room);
	if (b > 0) return 2 * room / (b + root);
	return a > 0 ? (root - b) / (2 * a) : Number.POSITIVE_INFINITY;
}
function limitsOf(ply) {
	const shear = ply.shearStrength / ply.shearModulus;
	return [
		{
			component: "fibre tension",
			index: 0,
			strain: ply.tensileStrength / ply.axialModulus
		},
		{
			component: "fibre compression",
			index: 0,
			strain: -ply.compressiveStrength / ply.axialModulus
		},
		{
			component: "transverse tension",
			index: 1,
			strain: ply.transverseTensileStrength / ply.transverseModulus
		},
		{
			component: "transverse compression",
			index: 1,
			strain: -ply.transverseCompressiveStrength / ply.transverseModulus
		},
		{
			component: "in-plane shear",
			index: 2,
			strain: shear
		},
		{
			component: "in-plane shear",
			index: 2,
			strain: -shear
		}
	];
}
/** Largest share of an allowable strain that is used: 1 at failure. */
const maximumStrainIndex = (ply, strain) => Math.max(...limitsOf(ply).map(({ index, strain: limit }) => strain[index] / limit));
function limitFactor({ index, strain }, fixed, load) {
	const used = fixed[index] / strain;
	if (used >= 1) return 0;
	const rate = load[index] / strain;
	return rate > 0 ? (1 - used) / rate : Number.POSITIVE_INFINITY;
}
/**
* The place that fails first. Among places that temperature alone breaks, the one furthest beyond;
* among equal ones (both faces of a wall that does not bend) the innermost.
*/
var Earliest = class {
	#factor = Number.POSITIVE_INFINITY;
	#beyond = 0;
	#place = null;
	offer(factor, beyond, place) {
		if (factor > 0) {
			if (!(factor < this.#factor * (1 - 1e-12))) return;
		} else {
			const by = beyond();
			if (this.#factor === 0 && !(by > this.#beyond * (1 + 1e-12))) return;
			this.#beyond = by;
		}
		this.#factor = factor;
		this.#place = place();
	}
	get result() {
		return {
			factor: this.#factor,
			place: this.#place
		};
	}
};
function facesOf(stack) {
	const heights = plyHeights(stack);
	return stack.plies.flatMap(({ ply: material, angle, thickness }, ply) => {
		const back = turnBack(turnBy(angle));
		const q = reducedStiffness(material);
		const free = expansionOf(material);
		return ["inner", "outer"].map((face) => {
			const z = heights[ply] + (face === "outer" ? thickness / 2 : -thickness / 2);
			return {
				ply,
				angle,
				face,
				material,
				q,
				strainOf: ({ strain, curvature }, deltaT) => addTriple(turnStrain(addTriple(strain, curvature, z), back), free, -deltaT)
			};
		});
	});
}
/** Strain and stress in ply axes at the inner and outer face of every ply, inside to outside. */
function plyStates(stack, wall) {
	return facesOf(stack).map(({ ply, angle, face, q, strainOf }) => {
		const strain = strainOf(wall, wall.deltaT);
		return {
			ply,
			angle,
			face,
			strain,
			stress: times(q, strain)
		};
	});
}
/** Prepares a stack once for many strains. */
function makeFirstPly(stack) {
	const faces = facesOf(stack).map((face) => ({
		...face,
		criterion: tsaiWuOf(face.material),
		limits: limitsOf(face.material)
	}));
	return (fixed, perFactor) => {
		const tsaiWu = new Earliest();
		const maximumStrain = new Earliest();
		for (const { ply, angle, face, material, q, criterion, limits, strainOf } of faces) {
			const held = strainOf(fixed, fixed.deltaT);
			const load = strainOf(perFactor, 0);
			const heldStress = times(q, held);
			tsaiWu.offer(tsaiWuFactor(criterion, heldStress, times(q, load)), () => tsaiWuIndex(material, heldStress), () => ({
				ply,
				angle,
				face
			}));
			for (const limit of limits) maximumStrain.offer(limitFactor(limit, held, load), () => held[limit.index] / limit.strain, () => ({
				ply,
				angle,
				face,
				component: limit.component
			}));
		}
		return {
			tsaiWu: tsaiWu.result,
			maximumStrain: maximumStrain.result
		};
	};
}
/**
* @param fixed strain of the wall by temperature (and anything else that does not grow with the load)
* @param perFactor strain of the wall per unit of the load factor
*/
const firstPly = (stack, fixed, perFactor) => makeFirstPly(stack)(fixed, perFactor);
// src/model/margins/wall-bending.ts
const NO_BENDING = {
	axialHeld: 0,
	axialLoad: 0,
	hoopHeld: 0,
	hoopLoad: 0
};
function wallLines(state, i) {
	const { x: stations, unit, thermal } = state.layered.fields(state.loadCase.loads.force);
	const [load, held] = [unit.walls[i], thermal.walls[i]];
	return (x) => {
		let k = stations.findIndex((station) => station >= x);
		if (k < 0) k = stations.length - 1;
		const before = Math.max(k - 1, 0);
		const span = stations[k] - stations[before];
		const t = span === 0 ? 0 : (x - stations[before]) / span;
		const mix = (field, name) => field[name][before] + t * (field[name][k] - field[name][before]);
		return {
			momentHeld: mix(held, "moment"),
			momentLoad: mix(load, "moment"),
			hoopHeld: mix(held, "hoop"),
			hoopLoad: mix(load, "hoop")
		};
	};
}
const thicknessAt = (state, i, x) => {
	const { root, mouth } = i === 0 ? state.assembly.tube : state.assembly.outers[i - 1];
	return root.thickness + x / state.assembly.overlap * (mouth.thickness - root.thickness);
};
/** ν_θx: how much of a bending stress along is stress around as well; a flat wall is not judged so. */
function backOf({ assembly }, i) {
	if (assembly.flat) return 0;
	const { material } = i === 0 ? assembly.tube : assembly.outers[i - 1];
	const { poisson, axialModulus, hoopModulus } = plateProperties(material);
	return poisson * hoopModulus / axialModulus;
}
/** @returns for a place and a face (1 outer, −1 inner) the stress at each clocking */
function wallBending(state, i) {
	const back = backOf(state, i);
	const lines = wallLines(state, i);
	return (x, face) => {
		const t = thicknessAt(state, i, x);
		const { momentHeld, momentLoad, hoopHeld, hoopLoad } = lines(x);
		const bend = -face * 6 / (t * t);
		return (theta) => {
			const pull = pullAt(state, theta);
			return {
				axialHeld: bend * momentHeld,
				axialLoad: bend * momentLoad * pull,
				hoopHeld: hoopHeld / t + back * bend * momentHeld,
				hoopLoad: (hoopLoad / t + back * bend * momentLoad) * pull
			};
		};
	};
}
// src/model/margins/first-ply-modes.ts
/** Stations over each half of the overlap. */
const STATIONS$1 = 8;
function firstPlyModes(state, factors, stresses, i, material) {
	const asked = askedFactor("first-ply", state.loadCase.kind, factors);
	if (asked === null) return [];
	const { assembly, loadCase } = state;
	const plyAt = plyFactorAt(state, stresses, i, material);
	return [{
		from: assembly.overlap / 2,
		to: assembly.overlap
	}, {
		from: 0,
		to: assembly.overlap / 2
	}].flatMap(({ from, to }) => {
		const places = Array.from({ length: 9 }, (_v, k) => k === STATIONS$1 ? to : from + (to - from) * k / STATIONS$1).map((x) => ({
			x,
			at: plyAt(x)
		}));
		const lowest = (theta) => {
			let best = {
				factor: Number.POSITIVE_INFINITY,
				x: to,
				reach: null
			};
			for (const { x, at } of places) {
				const reach = at(theta);
				const factor = Math.min(reach.tsaiWu, reach.maximumStrain);
				if (factor < best.factor * (1 - 1e-9)) best = {
					factor,
					x,
					reach
				};
			}
			return best;
		};
		const [worst] = worstClockings(assembly.flat, loadCase.loads, (theta) => lowest(theta).factor);
		if (!worst || !(worst.factor < 1e9)) return [];
		const { factor, x, reach } = lowest(worst.theta);
		const part = stresses.parts[i].name;
		return [resultOf(state, {
			mode: "first-ply",
			part,
			reached: factor,
			asked,
			x,
			theta: worst.theta,
			wholeBondFlows: false,
			...reach ? { plies: reach } : {}
		})];
	});
}
/** Strains of a laminate wall at a place and clocking. */
function wallStrainAt(state, stresses, i, material) {
	const { a, thermalForce } = stiffnessOf$1(material.stack);
	const flexibility = invertPlane(a);
	const free = times(flexibility, thermalForce);
	const lines = wallLines(state, i);
	const properties = plateProperties(material);
	return (x) => {
		const t = thicknessAt(state, i, x);
		const { bending } = shellOf(properties, {
			radius: 1,
			thickness: t,
			flat: state.assembly.flat
		}, "both", 0);
		const { momentHeld, momentLoad, hoopHeld, hoopLoad } = lines(x);
		const stressAt = stresses.at(i, x);
		return (theta) => {
			const { axial, thermal, shear } = stressAt(theta);
			const pull = pullAt(state, theta);
			const held = times(flexibility, [
				thermal * t,
				hoopHeld,
				0
			]);
			return {
				held: {
					strain: addTriple(held, free, state.deltaT),
					curvature: [
						-momentHeld / bending,
						0,
						0
					]
				},
				load: {
					strain: times(flexibility, [
						axial * t,
						hoopLoad * pull,
						shear * t
					]),
					curvature: [
						-momentLoad * pull / bending,
						0,
						0
					]
				}
			};
		};
	};
}
function plyFactorAt(state, stresses, i, material) {
	const firstPly = makeFirstPly(material.stack);
	const strainAt = wallStrainAt(state, stresses, i, material);
	return (x) => {
		const at = strainAt(x);
		return (theta) => {
			const { held, load } = at(theta);
			return reachOf(firstPly({
				...held,
				deltaT: state.deltaT
			}, load));
		};
	};
}
function reachOf({ tsaiWu, maximumStrain }) {
	const byStrain = maximumStrain.factor < tsaiWu.factor;
	const place = byStrain ? maximumStrain.place : tsaiWu.place;
	return {
		tsaiWu: tsaiWu.factor,
		maximumStrain: maximumStrain.factor,
		ply: place?.ply ?? 0,
		angle: place?.angle ?? 0,
		criterion: byStrain ? "maximum-strain" : "tsai-wu"
	};
}
// src/model/margins/wall-strength.ts
function metalFactor(stress, strength, face) {
	const along = [stress.thermal + face.axialHeld, stress.axial + face.axialLoad];
	const around = [face.hoopHeld, face.hoopLoad];
	const square = (p, q) => along[p] * along[q] - (along[p] * around[q] + along[q] * around[p]) / 2 + around[p] * around[q];
	const room = strength * strength - square(0, 0);
	if (room <= 0) return 0;
	const a = square(1, 1) + 3 * stress.shear * stress.shear;
	if (a === 0) return Number.POSITIVE_INFINITY;
	const b = square(0, 1);
	const root = Math.sqrt(b * b + a * room);
	return b > 0 ? room / (b + root) : (root - b) / a;
}
function laminateFactor(stress, material, face) {
	const thermal = stress.thermal + face.axialHeld;
	const axial = stress.axial + face.axialLoad;
	const across = stress.shear / material.shearStrength;
	let best = Number.POSITIVE_INFINITY;
	for (const [sign, strength] of [[1, material.tensileStrength], [-1, material.compressiveStrength]]) {
		const factor = factorTo(1, thermal / strength, axial / strength, across);
		if (!Number.isFinite(factor)) continue;
		if ((thermal + factor * axial) * sign >= 0 && factor < best) best = factor;
	}
	return best;
}
// src/model/margins/wall-stress.ts
/** Section of a tapered wall at x: linear between the nearest of root, middle and mouth. */
function sectionAt(part, t) {
	const [a, b, s] = t <= .5 ? [
		part.root,
		part.middle,
		2 * t
	] : [
		part.middle,
		part.mouth,
		2 * t - 1
	];
	const mix = (p, q) => p + s * (q - p);
	const radius = mix(a.outerRadius, b.outerRadius);
	return {
		area: mix(a.area, b.area),
		bending: radius === 0 ? 0 : radius / mix(a.secondMoment, b.secondMoment),
		torsion: radius === 0 ? 0 : radius / mix(a.polarMoment, b.polarMoment)
	};
}
function wallStresses(assembly, bonds, loads, deltaT) {
	const parts = [assembly.tube, ...assembly.outers];
	const { overlap } = assembly;
	const axial = (moment) => solveElastic(axialChannel(assembly, 1, {
		force: 1 - moment,
		moment
	}, moment === 0 ? deltaT : 0), bonds, overlap);
	const byForce = axial(0);
	const byMoment = loads.moment === 0 ? null : axial(1);
	const byTorque = loads.torque === 0 && loads.shear === 0 ? null : solveElastic(hoopChannel(assembly, 1), bonds, overlap);
	/** Share of a unit load in part i: an outer's own, or what is left for the tube. */
	const share = (solution, i, x) => {
		if (!solution) return 0;
		if (i > 0) return solution.mechanical.outerForce(i - 1, x);
		let left = 1;
		for (let j = 0; j < bonds.length; j++) left -= solution.mechanical.outerForce(j, x);
		return left;
	};
	const thermalForce = (i, x) => {
		if (i > 0) return byForce.thermal.outerForce(i - 1, x);
		let sum = 0;
		for (let j = 0; j < bonds.length; j++) sum -= byForce.thermal.outerForce(j, x);
		return sum;
	};
	return {
		parts,
		behind: (i, x) => ({
			...sectionAt(parts[i], x / overlap),
			ofForce: share(byForce, i, x),
			ofMoment: share(byMoment, i, x),
			ofTorque: share(byTorque, i, x),
			thermalForce: thermalForce(i, x)
		}),
		at: (i, x) => {
			const { area, bending, torsion } = sectionAt(parts[i], x / overlap);
			const sideways = share(byTorque, i, x);
			const byAxial = share(byForce, i, x) * loads.force / area;
			const byBending = share(byMoment, i, x) * loads.moment * bending;
			const thermal = thermalForce(i, x) / area;
			const byTwist = sideways * loads.torque * torsion;
			const byShear = sideways * 2 * loads.shear / area;
			return (theta) => ({
				axial: byAxial + byBending * Math.cos(theta),
				thermal,
				shear: byTwist + byShear * Math.sin(theta)
			});
		}
	};
}
// src/model/margins/wall-modes.ts
/** Stations along the overlap at which the walls are checked, both ends among them. */
const WALL_STATIONS = 12;
function wallModes(state, factors, { bending } = { bending: true }) {
	const { assembly, bonds, loadCase, deltaT } = state;
	const { kind, loads } = loadCase;
	const stresses = wallStresses(assembly, bonds, loads, deltaT);
	const thetas = clockings(assembly.flat, loads);
	const results = [];
	const faces = bending ? [-1, 1] : [0];
	const check = (mode, i, factorOf) => {
		const asked = askedFactor(mode, kind, factors);
		if (asked === null) return;
		const bend = bending ? wallBending(state, i) : null;
		/** The worse face at a place and clocking. */
		const factorAt = (station) => {
			const stressAt = stresses.at(i, station);
			const facesAt = faces.map((face) => bend ? bend(station, face) : () => NO_BENDING);
			return (angle) => {
				let lowest = Number.POSITIVE_INFINITY;
				for (const faceAt of facesAt) lowest = Math.min(lowest, factorOf(stressAt(angle), faceAt(angle)));
				return lowest;
			};
		};
		let reached = Number.POSITIVE_INFINITY;
		let x = 0;
		let theta = 0;
		for (let k = 0; k <= WALL_STATIONS; k++) {
			const station = k === WALL_STATIONS ? assembly.overlap : assembly.overlap * k / WALL_STATIONS;
			const at = factorAt(station);
			for (const angle of thetas) {
				const factor = at(angle);
				if (factor < reached * (1 - 1e-9)) {
					reached = factor;
					x = station;
					theta = angle;
				}
			}
		}
		if (!(reached < 1e9)) return;
		const spacing = assembly.overlap / WALL_STATIONS;
		if (x > 0 && x < assembly.overlap) {
			const along = (station) => factorAt(station)(theta);
			const [from, to] = [Math.max(x - spacing, 0), Math.min(x + spacing, assembly.overlap)];
			x = findMinimum(along, from, to, .001 * spacing);
			reached = Math.min(reached, along(x));
		}
		if (thetas.length > 2) {
			const step = thetas[1];
			const at = factorAt(x);
			const refined = findMinimum(at, theta - step, theta + step, 1e-4);
			if (at(refined) < reached) {
				reached = at(refined);
				theta = (refined + 2 * Math.PI) % (2 * Math.PI);
			}
		}
		const part = stresses.parts[i].name;
		results.push(resultOf(state, {
			mode,
			part,
			reached,
			asked,
			x,
			theta,
			wholeBondFlows: false
		}));
	};
	stresses.parts.forEach((part, i) => {
		const { material } = part;
		if (material.kind === "isotropic") {
			const { yieldStrength, ultimateStrength } = material;
			check("metal-yield", i, (stress, face) => metalFactor(stress, yieldStrength, face));
			check("metal-ultimate", i, (stress, face) => metalFactor(stress, ultimateStrength, face));
		} else if (material.kind === "orthotropic") check("laminate-strength", i, (stress, face) => laminateFactor(stress, material, face));
		else results.push(...firstPlyModes(state, factors, stresses, i, material));
	});
	return results;
}
// src/model/margins/all-modes.ts
function allModes(state, adhesive, factors, { only, ofInterest } = {}) {
	const some = (group) => !only || [...group].some((mode) => only.has(mode));
	const results = some(WALL_MODES) ? wallModes(state, factors).filter(({ mode }) => !only || only.has(mode)) : [];
	const known = () => results.reduce((low, { margin }) => Math.min(low, margin), Number.POSITIVE_INFINITY);
	const interest = (mode) => ofInterest?.(mode, known()) ?? Number.POSITIVE_INFINITY;
	const shear = adhesiveModes(state, adhesive, factors, {
		...only ? { only } : {},
		troughOfInterest: interest("durability-trough")
	});
	results.push(...shear);
	if (some(PEEL_MODES)) {
		const strength = shear.find(({ mode }) => mode === "adhesive-strain");
		results.push(...peelModes(state, adhesive, factors, {
			...only ? { only } : {},
			ofInterest: interest,
			shearStrength: strength?.reached ?? Number.POSITIVE_INFINITY
		}));
	}
	return results;
}
// src/model/joint/section.ts
/** A = π(b² − a²), I = π(b⁴ − a⁴)/4, J = 2I, from inner radius a to outer radius b. */
function annulus(inner, outer) {
	const area = Math.PI * (outer - inner) * (outer + inner);
	const secondMoment = area * (outer * outer + inner * inner) / 4;
	return {
		area,
		secondMoment,
		polarMoment: 2 * secondMoment,
		outerRadius: outer,
		meanRadius: (inner + outer) / 2,
		thickness: outer - inner
	};
}
const strip = (width, thickness) => ({
	area: width * thickness,
	secondMoment: 0,
	polarMoment: 0,
	outerRadius: 0,
	meanRadius: 0,
	thickness
});
// src/model/joint/assembly.ts
/**
* A joint at one gap state as walls and bonds of known size. The tube keeps its size; the sleeve's
* bonded surface stands off by the gap, and its wall grows away from the bond.
*/
/**
* What a gap state adds to the nominal gap of a bond, mm: tolerance and offset together all the way
* round, or the offset alone on one side.
* @param inner a bond inside the tube: where the tube comes near the socket it leaves the spigot
*/
function gapChange(tolerance, offset, state, inner) {
	switch (state) {
		case "nominal": return 0;
		case "min": return -(tolerance + offset);
		case "max": return tolerance + offset;
		case "thin-side": return inner ? offset : -offset;
		case "thick-side": return inner ? -offset : offset;
	}
}
/**
* Thickness of a bond in a gap state.
* @param inner the inner bond of a double lap
* @throws ModelError when the gap closes
*/
function gapAt(bond, offset, state, input = "bond", inner = false) {
	const change = gapChange(bond.tolerance, offset, state, inner);
	const gap = bond.gap + change;
	if (gap > 0) return gap;
	throw new ModelError(`${input}.tolerance`, `The gap of ${bond.gap} mm closes: tolerance and offset together take ${Number((-change).toPrecision(6))} mm. Widen the gap or tighten the fit.`);
}
/**
* Gap states that differ for this joint, those that are usually worst first; just nominal where
* nothing varies. With no tolerance min and max are the sides of a single lap. In a double lap they
* never are: off-centre, one bond is thin where the other is thick.
*/
function gapStates(joint) {
	const offset = "offset" in joint ? joint.offset : 0;
	const hasTolerance = (joint.type === "sleeve-double" ? [joint.innerBond, joint.outerBond] : joint.type === "flat-double" ? [joint.lowerBond, joint.upperBond] : [joint.bond]).some((bond) => bond.tolerance > 0);
	if (offset === 0) return hasTolerance ? [
		"min",
		"max",
		"nominal"
	] : ["nominal"];
	const isDouble = joint.type === "sleeve-double";
	return hasTolerance || isDouble ? [
		"min",
		"max",
		"nominal",
		"thin-side",
		"thick-side"
	] : [
		"min",
		"max",
		"nominal"
	];
}
function wallPart(name, wall, sectionOf) {
	return {
		name,
		material: wall.material,
		root: sectionOf(wall.atRoot),
		middle: sectionOf((wall.atRoot + wall.atMouth) / 2),
		mouth: sectionOf(wall.atMouth)
	};
}
const uniformPart = (name, material, section) => ({
	name,
	material,
	root: section,
	middle: section,
	mouth: section
});
const tubularBond = (name, gap, radius) => ({
	name,
	gap,
	radius,
	width: 2 * Math.PI * radius
});
function spigotWall(name, wall, outer) {
	const thickest = Math.max(wall.atRoot, wall.atMouth);
	if (outer - thickest <= 0) throw new ModelError(`${name}.${wall.atRoot >= wall.atMouth ? "atRoot" : "atMouth"}`, `A ${name} wall of ${thickest} mm does not fit inside the tube: its outside radius is ${Number(outer.toPrecision(4))} mm. Thin the wall or widen the tube.`);
	return wallPart(name, wall, (t) => annulus(outer - t, outer));
}
/**
* @throws ModelError naming the dimension that does not fit
*/
function assemble(joint, state) {
	if (joint.type === "flat-single" || joint.type === "flat-double") return flat(joint, state);
	const outer = joint.tube.outsideDiameter / 2;
	const inner = outer - joint.tube.wall;
	if (inner <= 0) throw new ModelError("tube.wall", `A wall of ${joint.tube.wall} mm leaves no bore in a tube of ${joint.tube.outsideDiameter} mm: thin the wall or widen the tube.`);
	const tube = uniformPart("tube", joint.tube.material, annulus(inner, outer));
	const { overlap } = joint;
	if (joint.type === "sleeve-single") {
		const gap = gapAt(joint.bond, joint.offset, state);
		const socket = joint.side === "socket";
		const radius = socket ? outer + gap / 2 : inner - gap / 2;
		const part = socket ? wallPart("sleeve", joint.sleeve, (t) => annulus(outer + gap, outer + gap + t)) : spigotWall("sleeve", joint.sleeve, inner - gap);
		const bonds = [tubularBond("bond", gap, radius)];
		return {
			flat: false,
			overlap,
			tube,
			outers: [part],
			bonds,
			referenceRadius: radius
		};
	}
	const innerGap = gapAt(joint.innerBond, joint.offset, state, "innerBond", true);
	const outerGap = gapAt(joint.outerBond, joint.offset, state, "outerBond");
	return {
		flat: false,
		overlap,
		tube,
		outers: [spigotWall("spigot", joint.spigot, inner - innerGap), wallPart("socket", joint.socket, (t) => annulus(outer + outerGap, outer + outerGap + t))],
		bonds: [tubularBond("inner bond", innerGap, inner - innerGap / 2), tubularBond("outer bond", outerGap, outer + outerGap / 2)],
		referenceRadius: tube.root.meanRadius
	};
}
function flat(joint, state) {
	const { width, overlap } = joint;
	const sectionOf = (t) => strip(width, t);
	const tube = uniformPart("strip", joint.strip.material, sectionOf(joint.strip.thickness));
	const bond = (name, input, key) => ({
		name,
		gap: gapAt(input, 0, state, key),
		radius: 0,
		width
	});
	const single = joint.type === "flat-single";
	return {
		flat: true,
		overlap,
		tube,
		outers: single ? [wallPart("plate", joint.plate, sectionOf)] : [wallPart("lower strap", joint.lowerStrap, sectionOf), wallPart("upper strap", joint.upperStrap, sectionOf)],
		bonds: single ? [bond("bond", joint.bond, "bond")] : [bond("lower bond", joint.lowerBond, "lowerBond"), bond("upper bond", joint.upperBond, "upperBond")],
		referenceRadius: 0
	};
}
// src/model/joint/adhesive-state.ts
/**
* Adhesive properties at a service temperature: linear between the rows of the same moisture, the
* nearest row (and a flag) beyond them. Never extrapolated.
*/
/** @throws ModelError naming `moisture` when the table has no row of that moisture */
function rowsAt(adhesive, temperature, moisture) {
	const rows = adhesive.states.filter((row) => row.moisture === moisture).sort((a, b) => a.temperature - b.temperature);
	const first = rows[0];
	const last = rows[rows.length - 1];
	if (!first || !last) throw new ModelError("moisture", `The adhesive has no ${moisture} properties: add a ${moisture} row to its table, or change the moisture of the load case.`);
	const pick = (below, above, share, outsideTable) => ({
		below,
		above,
		share,
		outsideTable
	});
	if (temperature <= first.temperature) return pick(first, first, 0, temperature < first.temperature);
	if (temperature >= last.temperature) return pick(last, last, 0, temperature > last.temperature);
	const above = rows.findIndex((row) => row.temperature >= temperature);
	const a = rows[above - 1];
	const b = rows[above];
	return pick(a, b, (temperature - a.temperature) / (b.temperature - a.temperature), false);
}
/** @throws ModelError naming `moisture` when the table has no row of that moisture */
function adhesiveStateAt(adhesive, temperature, moisture) {
	const { below, above, share, outsideTable } = rowsAt(adhesive, temperature, moisture);
	return {
		...between(below, above, share),
		expansion: adhesive.expansion ?? 0,
		outsideTable
	};
}
function between(a, b, t) {
	const mix = (p, q) => p + t * (q - p);
	const peel = a.peelStrength === void 0 || b.peelStrength === void 0 ? void 0 : mix(a.peelStrength, b.peelStrength);
	return {
		shearModulus: mix(a.shearModulus, b.shearModulus),
		modulus: mix(a.modulus, b.modulus),
		shearYield: mix(a.shearYield, b.shearYield),
		plasticStrain: mix(a.plasticStrain, b.plasticStrain),
		peelStrength: peel
	};
}
// src/model/joint/bond-law.ts
const throughFlexibility = (part) => (part.root.thickness + part.mouth.thickness) / 2 / axialProperties(part.material).throughShearModulus;
/** Shear flexibility of the walls at bond j, mm/MPa. */
function adherendFlexibility(assembly, j) {
	return (assembly.bonds.length === 2 ? 1 / 6 : 1 / 3) * throughFlexibility(assembly.tube) + throughFlexibility(assembly.outers[j]) / 3;
}
/** @param adhesives state of the adhesive in each bond, knockdowns taken off */
function bondLaws(assembly, adhesives, adherendShear) {
	return assembly.bonds.map((bond, j) => {
		const adhesive = adhesives[j];
		const flexibility = bond.gap / adhesive.shearModulus + (adherendShear ? adherendFlexibility(assembly, j) : 0);
		return {
			width: bond.width,
			stiffness: 1 / flexibility,
			shearYield: adhesive.shearYield,
			slipAtFailure: adhesive.shearYield * flexibility + bond.gap * adhesive.plasticStrain
		};
	});
}
/** Shear strain of the adhesive alone for a slip of the bond: γ = (s − τ·f)/h. */
function adhesiveStrain(slip, stress, gap, adherendFlex) {
	return (slip - stress * adherendFlex) / gap;
}
// src/model/numerics/dense.ts
/** a (rows × inner) times b (inner × columns). */
function multiply(a, b, rows, inner, columns) {
	const out = new Float64Array(rows * columns);
	for (let i = 0; i < rows; i++) for (let k = 0; k < inner; k++) {
		const factor = a[i * inner + k];
		if (factor === 0) continue;
		const from = k * columns;
		const to = i * columns;
		for (let j = 0; j < columns; j++) out[to + j] += factor * b[from + j];
	}
	return out;
}
/**
* Solves a·X = b for `columns` right-hand sides at once, by elimination with row pivoting. Both
* `a` (size × size) and `b` (size × columns) are overwritten; the answer stands in `b`.
* @throws RangeError when the matrix is singular
*/
function solveDense(a, b, size, columns) {
	for (let k = 0; k < size; k++) {
		let pivot = k;
		for (let i = k + 1; i < size; i++) if (Math.abs(a[i * size + k]) > Math.abs(a[pivot * size + k])) pivot = i;
		const largest = a[pivot * size + k];
		if (largest === 0 || !Number.isFinite(largest)) throw new RangeError("singular system");
		if (pivot !== k) {
			swapRows(a, pivot, k, size);
			swapRows(b, pivot, k, columns);
		}
		for (let i = k + 1; i < size; i++) {
			const factor = a[i * size + k] / largest;
			if (factor === 0) continue;
			for (let j = k + 1; j < size; j++) a[i * size + j] -= factor * a[k * size + j];
			for (let j = 0; j < columns; j++) b[i * columns + j] -= factor * b[k * columns + j];
		}
	}
	for (let k = size - 1; k >= 0; k--) {
		const pivot = a[k * size + k];
		for (let j = 0; j < columns; j++) {
			let sum = b[k * columns + j];
			for (let i = k + 1; i < size; i++) sum -= a[k * size + i] * b[i * columns + j];
			b[k * columns + j] = sum / pivot;
		}
	}
	return b;
}
function swapRows(a, i, k, columns) {
	for (let j = 0; j < columns; j++) {
		const held = a[i * columns + j];
		a[i * columns + j] = a[k * columns + j];
		a[k * columns + j] = held;
	}
}
/** The block of rows × columns that starts at (row, column) of a matrix `width` wide. */
function block(a, width, row, column, rows, columns) {
	const out = new Float64Array(rows * columns);
	for (let i = 0; i < rows; i++) for (let j = 0; j < columns; j++) out[i * columns + j] = a[(row + i) * width + column + j];
	return out;
}
/** Largest sum of sizes along a row. */
function rowNorm(a, size) {
	let largest = 0;
	for (let i = 0; i < size; i++) {
		let sum = 0;
		for (let j = 0; j < size; j++) sum += Math.abs(a[i * size + j]);
		largest = Math.max(largest, sum);
	}
	return largest;
}
/** Row of a matrix, from index `from`, times a vector. */
function dot(rows, from, vector, length) {
	let sum = 0;
	for (let i = 0; i < length; i++) sum += rows[from + i] * vector[i];
	return sum;
}
// src/model/layered/layer-pull.ts
/**
* A layer that shrinks more than its walls is stretched by them and pulls on both, half on each face.
* The pull is constant along the bond; at a free end of the layer it stops, and there it bends the walls:
* without it thermal peel near the ends is a third too low. Only temperature's part is counted, that
* of the load is a few per mille of the walls' own force.
*/
function layerPulls({ shells, bonds }) {
	const pulls = shells.map(() => ({
		n: 0,
		m: 0
	}));
	bonds.forEach((bond, j) => {
		const inner = shells[j];
		const outer = shells[j + 1];
		const half = bond.radius * bond.gap * heldStress(bond, inner, outer) / 2;
		for (const [i, face] of [[j, inner.thickness / 2], [j + 1, -outer.thickness / 2]]) {
			pulls[i].n += half;
			pulls[i].m -= half * (shells[i].offset + face);
		}
	});
	return pulls;
}
/** Stress along the joint in a layer that its walls keep from shrinking, MPa. */
function heldStress(bond, inner, outer) {
	const along = (inner.freeAxial + outer.freeAxial) / 2 - bond.freeStrain;
	const around = (inner.freeHoop + outer.freeHoop) / 2 - bond.freeStrain;
	return bond.planeModulus * (along + bond.poisson * around);
}
/** Over this many gaps the layer's own stress builds up from a free end (by finite elements). */
const END_LENGTH = .5;
function endLack(section, j, overlap) {
	const bond = section.bonds[j];
	const stress = bond.contraction * heldStress(bond, section.shells[j], section.shells[j + 1]);
	const length = END_LENGTH * bond.gap;
	return {
		stress,
		length,
		force: stress * length * -Math.expm1(-overlap / length)
	};
}
// src/model/layered/ends.ts
/** Both ends of the overlap: the lap's own stiffness against what each wall meets there. */
/** Displacements of both ends of the overlap: by a unit load, and by temperature and flow. */
function endDisplacements(lap, k, { each, runOut, thermal }) {
	const half = each * lap.root.length;
	const size = 2 * half;
	const a = new Float64Array(size * size);
	const b = new Float64Array(size * 2);
	const fill = (end, k0, k1, p) => {
		for (let i = 0; i < half; i++) {
			const row = end * half + i;
			for (let j = 0; j < half; j++) {
				a[row * size + j] = k0[i * half + j];
				a[row * size + half + j] = k1[i * half + j];
			}
			b[row * 2 + 1] = -p[i];
		}
	};
	fill(0, k.k00, k.k01, k.p0);
	fill(1, k.k10, k.k11, k.p1);
	const shells = [lap.sectionAt(0).shells, lap.sectionAt(lap.length).shells];
	[lap.root, lap.mouth].forEach((walls, end) => {
		walls.forEach((wall, i) => {
			const first = end * half + each * i;
			const shell = shells[end][i];
			if (wall.kind === "clamped") {
				for (let row = first; row < first + each; row++) {
					a.fill(0, row * size, (row + 1) * size);
					a[row * size + row] = 1;
					b.fill(0, row * 2, row * 2 + 2);
				}
				if (thermal) b[(first + 1) * 2 + 1] = wall.growth;
			} else if (wall.kind === "cut") {
				b[first * 2] += wall.n;
				b[(first + 1) * 2] += wall.q;
				b[(first + 2) * 2] += wall.m - shell.offset * wall.n;
			} else if (wall.kind === "run-out") {
				const beyond = runOut(shell, wall.pull, end === 0 ? "root" : "mouth");
				for (let row = 0; row < each; row++) {
					for (let column = 0; column < each; column++) a[(first + row) * size + first + column] -= beyond.stiffness[row * each + column];
					b[(first + row) * 2] += beyond.pull[row];
					b[(first + row) * 2 + 1] += beyond.free[row];
				}
			}
		});
	});
	for (const end of thermal ? [0, 1] : []) {
		const section = lap.sectionAt(end * lap.length);
		const walls = end === 0 ? lap.root : lap.mouth;
		section.bonds.forEach((bond, j) => {
			const force = endLack(section, j, lap.length).force * bond.radius * (end === 0 ? -1 : 1);
			if (walls[j].kind !== "clamped") b[(end * half + each * j + 1) * 2 + 1] -= force;
			if (walls[j + 1].kind !== "clamped") b[(end * half + each * (j + 1) + 1) * 2 + 1] += force;
		});
	}
	solveDense(a, b, size, 2);
	const column = (c) => [Float64Array.from({ length: half }, (_v, i) => b[i * 2 + c]), Float64Array.from({ length: half }, (_v, i) => b[(half + i) * 2 + c])];
	return [column(0), column(1)];
}
// src/model/layered/exponential.ts
/**
* y′ = A·y + g over a short length: the transfer matrix e^(Aℓ) with its particular part, by Taylor's
* series in blocks, on balanced unknowns so that millimetres and newtons weigh alike.
*/
const SWEEPS = 8;
function balance(a, g) {
	const size = g.length;
	const balanced = Float64Array.from(a);
	const scale = new Float64Array(size).fill(1);
	for (let sweep = 0, changed = true; sweep < SWEEPS && changed; sweep++) {
		changed = false;
		for (let i = 0; i < size; i++) {
			let row = 0;
			let column = 0;
			for (let j = 0; j < size; j++) {
				if (i === j) continue;
				row += Math.abs(balanced[i * size + j]);
				column += Math.abs(balanced[j * size + i]);
			}
			if (row === 0 || column === 0) continue;
			const factor = 2 ** Math.round(Math.log2(row / column) / 2);
			if (factor === 1) continue;
			changed = true;
			scale[i] *= factor;
			for (let j = 0; j < size; j++) {
				balanced[i * size + j] /= factor;
				balanced[j * size + i] *= factor;
			}
		}
	}
	return {
		size,
		a: balanced,
		g: g.map((value, i) => value / scale[i]),
		scale,
		rate: rowNorm(balanced, size)
	};
}
const SQUARINGS = 3;
/** 1/k! to k = 15: 0.5^16/16! is below rounding. */
const INVERSE_FACTORIAL = [1];
for (let k = 1; k < 16; k++) INVERSE_FACTORIAL.push(INVERSE_FACTORIAL[k - 1] / k);
/** @param length with rate·length ≤ LONGEST_STEP */
function transferOver(balanced, length) {
	const { size, a, scale } = balanced;
	const x = a.map((value) => value * length / 2 ** SQUARINGS);
	const x2 = multiply(x, x, size, size, size);
	const x3 = multiply(x2, x, size, size, size);
	const x4 = multiply(x2, x2, size, size, size);
	const powers = [
		x,
		x2,
		x3
	];
	let matrix = new Float64Array(size * size);
	for (let top = 12; top >= 0; top -= 4) {
		if (top < 12) matrix = multiply(matrix, x4, size, size, size);
		for (let i = 0; i < size; i++) matrix[i * size + i] += INVERSE_FACTORIAL[top];
		for (let k = 1; k < 4; k++) {
			const c = INVERSE_FACTORIAL[top + k];
			const power = powers[k - 1];
			for (let i = 0; i < matrix.length; i++) matrix[i] += c * power[i];
		}
	}
	for (let i = 0; i < SQUARINGS; i++) matrix = multiply(matrix, matrix, size, size, size);
	for (let i = 0; i < size; i++) for (let j = 0; j < size; j++) matrix[i * size + j] *= scale[i] / scale[j];
	return {
		matrix,
		load: advance(balanced, new Float64Array(size), 1, length)
	};
}
/** The state a length further on, from the series on the vector alone. */
function advance({ size, a, g, scale }, y, share, length) {
	const z = new Float64Array(size);
	let term = new Float64Array(size);
	let next = new Float64Array(size);
	for (let i = 0; i < size; i++) {
		z[i] = y[i] / scale[i];
		term[i] = z[i];
	}
	for (let k = 1; k < MOST_TERMS; k++) {
		let largest = 0;
		let moved = 0;
		for (let i = 0, at = 0; i < size; i++) {
			let sum = k === 1 ? share * g[i] : 0;
			for (let j = 0; j < size; j++) sum += a[at++] * term[j];
			const value = sum * length / k;
			next[i] = value;
			z[i] += value;
			largest = Math.max(largest, Math.abs(z[i]));
			moved = Math.max(moved, Math.abs(value));
		}
		if (moved <= 1e-17 * largest) break;
		const held = term;
		term = next;
		next = held;
	}
	for (let i = 0; i < size; i++) z[i] *= scale[i];
	return z;
}
/** With rate·length ≤ LONGEST_STEP the terms are below rounding long before. */
const MOST_TERMS = 40;
// src/model/layered/stretch.ts
/**
* A stretch of the lap by its end stiffness: forces at both ends from displacements at both ends,
*
*   f0 = k00·d0 + k01·d1 + p0     f1 = k10·d0 + k11·d1 + p1
*
* f the internal forces in the sense of layeredSystem, at both ends, and p what temperature and flow
* add. Two stretches joined end to end make one, their middle condensed: joining equal ones again
* and again ("doubling") covers any length from a short exact piece. No growing exponential appears.
*/
/** A stretch of constant coefficients, of any length. */
const uniformStretch = (a, g, length) => balancedStretch(balance(a, g), length);
function balancedStretch(balanced, length) {
	const doublings = Math.max(0, Math.ceil(Math.log2(balanced.rate * length / 4)));
	let stretch = shortStretch(balanced, length / 2 ** doublings);
	for (let i = 0; i < doublings; i++) stretch = join(stretch, stretch);
	return stretch;
}
function shortStretch(balanced, length) {
	const half = balanced.size / 2;
	const { matrix, load } = transferOver(balanced, length);
	const ends = endStiffness(matrix, half);
	const p0 = multiply(ends.k01, load.slice(0, half), half, half, 1).map((value) => -value);
	const p1 = multiply(block(matrix, 2 * half, half, half, half, half), p0, half, half, 1);
	for (let i = 0; i < half; i++) p1[i] += load[half + i];
	const whole = {
		...ends,
		p0,
		p1
	};
	return {
		length,
		half,
		ends: whole,
		sample: ({ x, from, to, start }, d0, d1, share, see) => {
			const y = new Float64Array(2 * half);
			y.set(d0);
			y.set(endForce(whole.k00, d0, whole.k01, d1, whole.p0, share, half), half);
			for (let i = from; i < to; i++) {
				const along = Math.min(Math.max(x[i] - start, 0), length);
				see(i, along === 0 ? y : advance(balanced, y, share, along));
			}
		}
	};
}
function endStiffness(t, half) {
	const size = 2 * half;
	const part = (row, column) => block(t, size, row * half, column * half, half, half);
	const tff = part(1, 1);
	const right = new Float64Array(half * size);
	const tdd = part(0, 0);
	for (let i = 0; i < half; i++) {
		right[i * size + i] = 1;
		for (let j = 0; j < half; j++) right[i * size + half + j] = -tdd[i * half + j];
	}
	solveDense(part(0, 1), right, half, size);
	const k01 = block(right, size, 0, 0, half, half);
	const k00 = block(right, size, 0, half, half, half);
	const k11 = multiply(tff, k01, half, half, half);
	const k10 = multiply(tff, k00, half, half, half);
	const tfd = part(1, 0);
	for (let i = 0; i < k10.length; i++) k10[i] += tfd[i];
	return {
		k00,
		k01,
		k10,
		k11
	};
}
function endForce(a, d0, b, d1, p, share, half) {
	const out = new Float64Array(half);
	for (let i = 0; i < half; i++) {
		let sum = share * p[i];
		for (let j = 0; j < half; j++) sum += a[i * half + j] * d0[j] + b[i * half + j] * d1[j];
		out[i] = sum;
	}
	return out;
}
/** Two stretches end to end, the first one's end being the second one's start. */
function join(first, second) {
	const { half } = first;
	const [a, b] = [first.ends, second.ends];
	const middle = a.k11.map((value, i) => value - b.k00[i]);
	const columns = 2 * half + 1;
	const right = new Float64Array(half * columns);
	for (let i = 0; i < half; i++) {
		for (let j = 0; j < half; j++) {
			right[i * columns + j] = -a.k10[i * half + j];
			right[i * columns + half + j] = b.k01[i * half + j];
		}
		right[i * columns + 2 * half] = b.p0[i] - a.p1[i];
	}
	solveDense(middle, right, half, columns);
	const m0 = block(right, columns, 0, 0, half, half);
	const m1 = block(right, columns, 0, half, half, half);
	const mp = block(right, columns, 0, 2 * half, half, 1);
	const plus = (base, k, m, width) => {
		const out = multiply(k, m, half, half, width);
		if (base) for (let i = 0; i < out.length; i++) out[i] += base[i];
		return out;
	};
	const ends = {
		k00: plus(a.k00, a.k01, m0, half),
		k01: plus(null, a.k01, m1, half),
		k10: plus(null, b.k10, m0, half),
		k11: plus(b.k11, b.k10, m1, half),
		p0: plus(a.p0, a.k01, mp, 1),
		p1: plus(b.p1, b.k10, mp, 1)
	};
	return {
		length: first.length + second.length,
		half,
		ends,
		sample: ({ x, from, to, start }, d0, d1, share, see) => {
			const dm = endForce(m0, d0, m1, d1, mp, share, half);
			const middleAt = start + first.length;
			let split = from;
			while (split < to && x[split] < middleAt) split++;
			if (split > from) first.sample({
				x,
				from,
				to: split,
				start
			}, d0, dm, share, see);
			if (split < to) second.sample({
				x,
				from: split,
				to,
				start: middleAt
			}, dm, d1, share, see);
		}
	};
}
/** Any number of stretches in a row, joined in a balanced tree. */
function joinAll(stretches) {
	if (stretches.length === 1) return stretches[0];
	const middle = stretches.length >> 1;
	return join(joinAll(stretches.slice(0, middle)), joinAll(stretches.slice(middle)));
}
// src/model/layered/run-out.ts
/**
* A single wall that goes on beyond the overlap, as what it answers at the overlap's end:
* f = stiffness·d + load·pull + free, f and d those of the wall there.
*/
/** κ of a wall bent on its own. */
const SHEAR_FACTOR = 5 / 6;
/** Lengths √(R·t) after which nothing of the end is left: e^(−1.3·24) is below rounding. */
const FAR$1 = 24;
/** A flat wall has no such length: its end moment goes on; any length gives the same answer. */
const FLAT_LENGTH = 8;
/** A wall by itself, as a section. */
const aloneIn = (shell) => ({
	shells: [shell],
	bonds: [],
	shearFactor: SHEAR_FACTOR
});
/**
* @param pull internal force n at the far end per unit load, or `held` there
* @param system of the wall by itself
* @param each unknowns of a wall: u, w, φ, and v in the first harmonic
*/
function runOut(shell, pull, side, system, each) {
	const length = shell.flat ? FLAT_LENGTH * shell.thickness : FAR$1 * Math.sqrt(shell.radius * shell.thickness);
	const { ends } = uniformStretch(system.a, system.g, length);
	const nearIsStart = side === "mouth";
	const [nearNear, nearFar] = nearIsStart ? [ends.k00, ends.k01] : [ends.k11, ends.k10];
	const [farFar, farNear] = nearIsStart ? [ends.k11, ends.k10] : [ends.k00, ends.k01];
	const [nearLoad, farLoad] = nearIsStart ? [ends.p0, ends.p1] : [ends.p1, ends.p0];
	const held = pull === "held";
	const width = each + 2;
	const matrix = new Float64Array(each * each);
	const right = new Float64Array(each * width);
	const row = (target, terms) => {
		for (const [from, factor] of terms) {
			for (let j = 0; j < each; j++) {
				matrix[target * each + j] += factor * farFar[from * each + j];
				right[target * width + j] -= factor * farNear[from * each + j];
			}
			right[target * width + each + 1] -= factor * farLoad[from];
		}
	};
	if (held) matrix[0] = 1;
	else {
		row(0, [[0, 1]]);
		right[each] = pull;
	}
	row(1, [[1, 1]]);
	row(2, [[2, 1], [0, shell.offset]]);
	if (each === 4) {
		if (held) matrix[15] = 1;
		else row(3, [[3, 1]]);
	}
	solveDense(matrix, right, each, width);
	const all = multiply(nearFar, right, each, each, width);
	const stiffness = new Float64Array(each * each);
	const byPull = new Float64Array(each);
	const byTemperature = new Float64Array(each);
	for (let i = 0; i < each; i++) {
		for (let j = 0; j < each; j++) stiffness[i * each + j] = nearNear[i * each + j] + all[i * width + j];
		byPull[i] = all[i * width + each];
		byTemperature[i] = nearLoad[i] + all[i * width + each + 1];
	}
	return {
		stiffness,
		pull: byPull,
		free: byTemperature
	};
}
// src/model/layered/opening-law.ts
/** Peel of the bonds from how far they are opened. */
/**
* Shares of a wall's t/E3 that the opening of a bond feels: of peel on the same face, and of peel on the
* other. A thick wall under a uniform pull on one face would have 3/8, on both 1/2 together; under
* peel that turns within a length like its thickness it has less. Set by the finite-element models of
* the verification book; the same values serve all of them.
*/
const WALL_SHARE = 1 / 4;
const ACROSS_SHARE = 1 / 8;
/** Openings of the bonds per peel, mm/MPa: h/E′ and the walls' own shares. */
function openingFlexibility$1({ shells, bonds }) {
	const count = bonds.length;
	const flexibility = new Float64Array(count * count);
	bonds.forEach(({ gap, constrainedModulus }, j) => {
		const walls = shells[j].throughFlexibility + shells[j + 1].throughFlexibility;
		flexibility[j * count + j] = gap / constrainedModulus + WALL_SHARE * walls;
		if (j + 1 < count) {
			const across = ACROSS_SHARE * shells[j + 1].throughFlexibility;
			flexibility[j * count + j + 1] = across;
			flexibility[(j + 1) * count + j] = across;
		}
	});
	return flexibility;
}
/** Peel of the bonds from their openings, MPa/mm: the inverse of their flexibility. */
function normalStiffness(section) {
	const count = section.bonds.length;
	const stiffness = new Float64Array(count * count);
	for (let j = 0; j < count; j++) stiffness[j * count + j] = 1;
	return solveDense(openingFlexibility$1(section), stiffness, count, count);
}
/**
* Peel of each bond as a row over y.
* @param each unknowns of a wall: u, w, φ, and v in the first harmonic
*/
function peelLaw(section, each = 3) {
	const { rows, fixed } = openings(section, each);
	const count = section.bonds.length;
	const stiffness = normalStiffness(section);
	return {
		rows: multiply(stiffness, rows, count, count, 2 * each * section.shells.length),
		fixed: multiply(stiffness, fixed, count, count, 1)
	};
}
/**
* What strains each bond across, as rows over y:
*
*   w₊ − w₋ − (growth of the half walls on both sides) + h·ν/(1 − ν)·(ε_x + ε_θ) − h·αa·ΔT·(1 + ν)/(1 − ν)
*
* A wall under stress gets thinner and pulls the bond open; a layer that is stretched with its walls
* wants to close and cannot. Both matter where the strain changes quickly, at the ends.
*/
function openings(section, each) {
	const { shells, bonds } = section;
	const pulls = layerPulls(section);
	const half = each * shells.length;
	const size = 2 * half;
	const rows = new Float64Array(bonds.length * size);
	const fixed = new Float64Array(bonds.length);
	const width = shells[0].flat ? commonWidthStrain(shells) : 0;
	bonds.forEach((bond, j) => {
		const row = j * size;
		rows[row + each * j + 1] = -1;
		rows[row + each * (j + 1) + 1] = 1;
		fixed[j] = -bond.freeOpening;
		for (const [i, side] of [[j, 1], [j + 1, -1]]) {
			const shell = shells[i];
			const { radius, thickness: t, offset } = shell;
			const [w, n, m] = [
				row + each * i + 1,
				row + half + each * i,
				row + half + each * i + 2
			];
			const around = each === 3 ? [w] : [w, w + 2];
			const ratio = shell.cxt / shell.cxx;
			const own = shell.ctt - ratio * shell.cxt;
			const byForce = (shell.thinAxial + shell.thinHoop * ratio) / (2 * radius);
			const byMoment = -side * 1.5 * shell.thinAxial / (t * radius);
			const pull = pulls[i];
			rows[n] += byForce + byMoment * offset;
			rows[m] += byMoment;
			fixed[j] -= byForce * pull.n + byMoment * (pull.m + offset * pull.n);
			for (const at of shell.flat ? [] : around) rows[at] += shell.thinHoop * own / (2 * radius);
			fixed[j] += shell.thinHoop * own * (width - shell.freeHoop) / 2 - shell.freeHalfThickness;
			const closing = bond.gap * bond.contraction / 2;
			const bend = -side * t / (2 * radius * shell.bending);
			rows[n] += closing * (1 / (radius * shell.cxx) + bend * offset);
			rows[m] += closing * bend;
			for (const at of shell.flat ? [] : around) rows[at] += closing * (1 - ratio) / radius;
			fixed[j] += closing * (shell.freeAxial - ratio * (width - shell.freeHoop) - pull.n / (radius * shell.cxx) - bend * (pull.m + offset * pull.n));
		}
	});
	return {
		rows,
		fixed
	};
}
// src/model/layered/slip-law.ts
/** Shear of the bonds from the slips between their faces, all bonds of a section together. */
/**
* Slip of each bond as a row over d.
* @param each unknowns of a wall: u, w, φ, and v in the first harmonic
*/
function slips({ shells, bonds }, each = 3) {
	const half = each * shells.length;
	const slip = new Float64Array(bonds.length * half);
	bonds.forEach((bond, j) => {
		const inner = shells[j];
		const outer = shells[j + 1];
		const row = j * half;
		slip[row + each * j] = -1;
		slip[row + each * j + 2] = (inner.thickness + bond.gap) / 2 + inner.offset;
		slip[row + each * (j + 1)] = 1;
		slip[row + each * (j + 1) + 2] = (outer.thickness + bond.gap) / 2 - outer.offset;
	});
	return slip;
}
/** Shear flexibility of the bonds together, with the warping of the walls between and beside them. */
function slipFlexibility({ shells, bonds }) {
	const count = bonds.length;
	const c = new Float64Array(count * count);
	const warp = (i) => shells[i].thickness / (12 * shells[i].throughShear);
	bonds.forEach((bond, j) => {
		c[j * count + j] = bond.gap / bond.shearModulus + warp(j) + warp(j + 1);
		if (j + 1 < count) {
			c[j * count + j + 1] = -warp(j + 1);
			c[(j + 1) * count + j] = -warp(j + 1);
		}
	});
	return c;
}
/** Shear of the bonds as stiffness·Δs + fixed; where a bond flows its shear is given. */
function shearLaw(section, flow) {
	const count = section.bonds.length;
	const c = slipFlexibility(section);
	const a = new Float64Array(count * count);
	const right = new Float64Array(count * (count + 1));
	section.bonds.forEach((bond, j) => {
		if (flow[j] === 0) {
			for (let k = 0; k < count; k++) a[j * count + k] = c[j * count + k];
			right[j * (count + 1) + j] = 1;
		} else {
			a[j * count + j] = 1;
			right[j * (count + 1) + count] = flow[j] * bond.shearYield;
		}
	});
	solveDense(a, right, count, count + 1);
	const stiffness = new Float64Array(count * count);
	const fixed = new Float64Array(count);
	for (let j = 0; j < count; j++) {
		for (let k = 0; k < count; k++) stiffness[j * count + k] = right[j * (count + 1) + k];
		fixed[j] = right[j * (count + 1) + count];
	}
	return {
		stiffness,
		fixed
	};
}
// src/model/layered/system.ts
/**
* The layered lap as a first-order system y′ = A·y + g in x, y = (d, f):
*
*   d = (u, w, φ) of each wall, axial at its reference line, radial outward, rotation w′ − γ
*   f = (n, q, m) of each wall, per radian (per width): what works on u′, w′, φ′
*
*   u′ = n/(R·cxx) − (cxt/cxx)·(w/R − αθΔT) + αxΔT          n′ = ∂B/∂u
*   w′ = φ + q/(R·κ·G13·t)                                   q′ = Nθ + ∂B/∂w
*   φ′ = m/(R·D)                                             m′ = −q + ∂B/∂φ
*
* B the energy of the bonds: shear τ = C⁻¹·Δs, peel σ = k_n·(Δn − δ), each acting on ρ of arc.
*/
function layeredSystem(section, flow) {
	const { shells, bonds } = section;
	const half = 3 * shells.length;
	const size = 2 * half;
	const a = new Float64Array(size * size);
	const g = new Float64Array(size);
	const put = (row, column, value) => {
		a[row * size + column] += value;
	};
	const width = commonWidthStrain(shells);
	const pulls = layerPulls(section);
	shells.forEach((shell, i) => {
		const [u, w, phi] = [
			3 * i,
			3 * i + 1,
			3 * i + 2
		];
		const [n, q, m] = [
			half + u,
			half + w,
			half + phi
		];
		const { radius, offset } = shell;
		const ratio = shell.cxt / shell.cxx;
		const bend = 1 / (radius * shell.bending);
		const pull = pulls[i];
		g[u] -= pull.n / (radius * shell.cxx) + offset * bend * (pull.m + offset * pull.n);
		g[phi] -= bend * (pull.m + offset * pull.n);
		put(u, n, 1 / (radius * shell.cxx) + offset * offset * bend);
		put(u, m, offset * bend);
		put(phi, m, bend);
		put(phi, n, offset * bend);
		put(w, phi, 1);
		put(w, q, 1 / (radius * section.shearFactor * shell.shear));
		put(m, q, -1);
		if (shell.flat) g[u] += shell.freeAxial - ratio * (width - shell.freeHoop);
		else {
			const hoop = shell.ctt - ratio * shell.cxt;
			put(u, w, -ratio / radius);
			put(q, n, ratio / radius);
			put(q, w, hoop / radius);
			g[u] += shell.freeAxial + ratio * shell.freeHoop;
			g[q] -= hoop * shell.freeHoop + ratio / radius * pull.n;
		}
	});
	const count = bonds.length;
	if (count === 0) return {
		half,
		a,
		g,
		stresses: () => ({
			shear: [],
			peel: [],
			trial: []
		})
	};
	const slip = slips(section);
	const peel = peelLaw(section);
	const { stiffness, fixed } = shearLaw(section, flow);
	bonds.forEach((bond, j) => {
		for (let row = 0; row < half; row++) {
			const pull = bond.radius * slip[j * half + row];
			const open = row === 3 * j + 1 ? -bond.radius : row === 3 * j + 4 ? bond.radius : 0;
			if (pull !== 0) {
				for (let column = 0; column < half; column++) for (let k = 0; k < count; k++) {
					const law = stiffness[j * count + k];
					if (law !== 0) put(half + row, column, pull * law * slip[k * half + column]);
				}
				g[half + row] += pull * fixed[j];
			}
			if (open !== 0) {
				for (let column = 0; column < size; column++) put(half + row, column, open * peel.rows[j * size + column]);
				g[half + row] += open * peel.fixed[j];
			}
		}
	});
	const c = slipFlexibility(section);
	return {
		half,
		a,
		g,
		stresses: (y, share) => {
			const slipped = bonds.map((_bond, j) => dot(slip, j * half, y, half));
			const shear = bonds.map((_bond, j) => share * fixed[j] + dot(stiffness, j * count, slipped, count));
			return {
				shear,
				peel: bonds.map((_bond, j) => dot(peel.rows, j * size, y, size) + share * peel.fixed[j]),
				trial: shear.map((tau, j) => {
					if (flow[j] === 0) return tau;
					return tau + (slipped[j] - dot(c, j * count, shear, count)) / c[j * count + j];
				})
			};
		}
	};
}
// src/model/layered/taper.ts
/**
* A tapered overlap as short stretches, each exact to fourth order in its length: Magnus' exponent
* from the system at the two Gauss points, Ω = (A1 + A2)·h/2 + √3/12·h²·[A2, A1].
*/
/**
* Stretches: short at the ends, where stresses turn within the length of a wall on its bond, longer by a
* tenth each inwards. Peel is then within 5e-5 of its largest in usual tapers, 5e-3 in extreme ones.
*/
const FIRST = .25;
const GROWTH = 1.1;
const FEWEST = 60;
const MOST = 400;
/** Turning lengths up to which the fourth-order exponent is used. */
const LONGEST_TURNS = 1.5;
function taperedStretches(lap, coefficients, from, to) {
	const kept = storeOf(lap);
	const marks = [
		from,
		...kept.marks.filter((x) => x > from && x < to),
		to
	];
	return marks.slice(1).map((end, i) => {
		const key = `${marks[i]} ${end} ${coefficients.name}`;
		let stretch = kept.stretches.get(key);
		if (!stretch) {
			stretch = taperedStretch(lap, coefficients, marks[i], end);
			kept.stretches.set(key, stretch);
		}
		return stretch;
	});
}
const stores = /* @__PURE__ */ new WeakMap();
function storeOf(lap) {
	let store = stores.get(lap);
	if (!store) {
		store = {
			marks: marksOf(lap),
			stretches: /* @__PURE__ */ new Map()
		};
		stores.set(lap, store);
	}
	return store;
}
/** Marks over the whole overlap, the same from both ends. */
function marksOf(lap) {
	const { length } = lap;
	const first = FIRST * Math.min(turningLength(lap.sectionAt(0)), turningLength(lap.sectionAt(length)));
	const longest = Math.min(length / FEWEST, Math.max(3 * (first / FIRST), length / MOST));
	const half = [];
	let step = Math.min(first, longest);
	for (let x = step; x < length / 2 - step / 2; x += step) {
		half.push(x);
		step = Math.min(step * GROWTH, longest);
	}
	return [
		...half,
		length / 2,
		...half.map((x) => length - x).reverse()
	];
}
/** Shortest length within which a wall bends on its bond: (4D/k)^¼, k its bond's stiffness across. */
function turningLength({ shells, bonds }) {
	const lengths = bonds.flatMap((bond, j) => [shells[j], shells[j + 1]].map(({ bending }) => (4 * bending * bond.gap / bond.constrainedModulus) ** .25));
	return Math.min(...lengths);
}
function taperedStretch(lap, coefficients, from, to) {
	const mean = exponent(lap, coefficients, from, to);
	const stretch = uniformStretch(mean.a, mean.g, to - from);
	const parts = /* @__PURE__ */ new Map();
	const partTo = (along) => {
		let part = parts.get(along);
		if (!part) {
			const { a, g } = exponent(lap, coefficients, from, from + along);
			part = balance(a, g);
			parts.set(along, part);
		}
		return part;
	};
	return {
		...stretch,
		sample: ({ x, from: first, to: last, start }, d0, d1, share, see) => {
			let y = /* @__PURE__ */ new Float64Array(0);
			stretch.sample({
				x: [start],
				from: 0,
				to: 1,
				start
			}, d0, d1, share, (_i, state) => {
				y = Float64Array.from(state);
			});
			for (let i = first; i < last; i++) {
				const along = Math.min(Math.max(x[i] - start, 0), to - from);
				see(i, along === 0 ? y : walk(partTo(along), y, share, along));
			}
		}
	};
}
/** y along a length on which the exponent is taken as constant. */
function walk(balanced, y, share, length) {
	const steps = Math.max(1, Math.ceil(balanced.rate * length / 4));
	let state = y;
	for (let i = 0; i < steps; i++) state = advance(balanced, state, share, length / steps);
	return state;
}
/**
* Magnus' exponent over its length; where that is many turning lengths, away from the ends, its series
* does not converge, and the middle's system stands for the whole: nothing turns there.
*/
function exponent(lap, { of }, from, to) {
	const h = to - from;
	const middle = (from + to) / 2;
	if (h > LONGEST_TURNS * turningLength(lap.sectionAt(middle))) return of(lap.sectionAt(middle));
	const gauss = Math.sqrt(3) / 6 * h;
	const first = of(lap.sectionAt(middle - gauss));
	const second = of(lap.sectionAt(middle + gauss));
	const size = first.g.length;
	const bracket = commutator(second, first, size);
	const c = Math.sqrt(3) / 12 * h;
	return {
		a: first.a.map((value, k) => (value + second.a[k]) / 2 + c * bracket.a[k]),
		g: first.g.map((value, k) => (value + second.g[k]) / 2 + c * bracket.g[k])
	};
}
/** [P, Q] of affine systems y′ = A·y + g: the last column goes along as that of a constant. */
function commutator(p, q, size) {
	const pq = multiply(p.a, q.a, size, size, size);
	const qp = multiply(q.a, p.a, size, size, size);
	const pg = multiply(p.a, q.g, size, size, 1);
	const qg = multiply(q.a, p.g, size, size, 1);
	return {
		a: pq.map((value, k) => value - qp[k]),
		g: pg.map((value, k) => value - qg[k])
	};
}
// src/model/layered/wall-forces.ts
/**
* @param pull what the layers on its faces carry of n and m, where temperature acts
* @param share of temperature that acts in y
*/
function wallForces(shell, y, { half, each, wall }, pull, share) {
	const at = each * wall;
	const axial = (y[half + at] - share * pull.n) / shell.radius;
	const moment = (y[half + at + 2] - share * pull.m) / shell.radius + shell.offset * axial;
	if (shell.flat) return {
		axial,
		hoop: 0,
		moment
	};
	const ratio = shell.cxt / shell.cxx;
	const own = shell.ctt - ratio * shell.cxt;
	const around = y[at + 1] + (each === 4 ? y[at + 3] : 0);
	return {
		axial,
		hoop: ratio * axial + own * (around / shell.radius - share * shell.freeHoop),
		moment
	};
}
// src/model/layered/lap.ts
const elasticZones = (lap) => [{
	to: lap.length,
	flow: lap.sectionAt(0).bonds.map(() => 0)
}];
/** Systems of uniform laps by what flows: the capped states of one lap ask for the same few. */
const known = /* @__PURE__ */ new WeakMap();
function uniformSystem(lap, flow) {
	let systems = known.get(lap);
	if (!systems) {
		systems = /* @__PURE__ */ new Map();
		known.set(lap, systems);
	}
	const key = flow.join();
	let found = systems.get(key);
	if (!found) {
		const system = layeredSystem(lap.sectionAt(0), flow);
		found = {
			system,
			balanced: balance(system.a, system.g)
		};
		systems.set(key, found);
	}
	return found;
}
const PLAIN = {
	each: 3,
	thermal: true,
	runOut: (shell, pull, side) => runOut(shell, pull, side, layeredSystem(aloneIn(shell), []), 3)
};
/** @throws RangeError when the lap has no single answer (a bond that flows from end to end) */
function solveLayered(lap, zones) {
	const stretches = [];
	let from = 0;
	for (const { to, flow } of zones) {
		if (to <= from) continue;
		if (lap.uniform) stretches.push(balancedStretch(uniformSystem(lap, flow).balanced, to - from));
		else {
			const coefficients = {
				name: flow.join(),
				of: (section) => layeredSystem(section, flow)
			};
			stretches.push(...taperedStretches(lap, coefficients, from, to));
		}
		from = to;
	}
	const whole = joinAll(stretches);
	const { half } = whole;
	const [mechanical, fixed] = endDisplacements(lap, whole.ends, PLAIN);
	const flowAt = (x) => (zones.find(({ to }) => x <= to) ?? zones[zones.length - 1]).flow;
	const sample = (x, load, share, see) => {
		const mix = (end) => {
			const out = new Float64Array(half);
			for (let i = 0; i < half; i++) out[i] = load * mechanical[end][i] + share * fixed[end][i];
			return out;
		};
		whole.sample({
			x,
			from: 0,
			to: x.length,
			start: 0
		}, mix(0), mix(1), share, see);
	};
	const uniformSection = lap.uniform ? lap.sectionAt(0) : null;
	const uniformPulls = uniformSection && layerPulls(uniformSection);
	const systemAt = (x) => uniformSection ? uniformSystem(lap, flowAt(x)).system : layeredSystem(lap.sectionAt(x), flowAt(x));
	const ends = [0, lap.length].map((x) => {
		const section = lap.sectionAt(x);
		return section.bonds.map((_bond, j) => endLack(section, j, lap.length));
	});
	const lackAt = (j, x) => {
		const [root, mouth] = [ends[0][j], ends[1][j]];
		return root.stress * Math.exp(-x / root.length) + mouth.stress * Math.exp((x - lap.length) / mouth.length);
	};
	const pointOf = (x, y, share) => {
		const section = uniformSection ?? lap.sectionAt(x);
		const stresses = systemAt(x).stresses(y, share);
		for (let j = 0; j < stresses.peel.length && share !== 0; j++) stresses.peel[j] -= share * lackAt(j, x);
		return {
			stresses,
			get forces() {
				const pulls = uniformPulls ?? layerPulls(section);
				return section.shells.map((shell, i) => wallForces(shell, y, {
					half,
					each: 3,
					wall: i
				}, pulls[i], share));
			}
		};
	};
	const along = (x, load, share) => {
		const points = [];
		sample(x, load, share, (i, y) => points.push(pointOf(x[i], y, share)));
		return points;
	};
	return {
		lap,
		along,
		at: (x, load, share) => along([x], load, share)[0]
	};
}
// src/model/layered/capped.ts
/**
* The layered lap with the shear of its bonds capped at yield: where a bond flows its shear is given
* and only peel still holds it. On each zone the system stays linear, so each state is exact for its
* zones; the zones are found by taking the flow where the last state asks for it, again and again.
* Only the axial shear is capped here: torque would make the bond flow sooner and peel less.
*/
const ROUNDS = 30;
/**
* @param load on the tube, N
* @param guess zones of a state near this one
* @returns null when no such state is found: the bond flows from end to end
*/
function cappedState(lap, load, guess = null) {
	let zones = guess ?? elasticZones(lap);
	const stations = fieldStations(lap.length, LOOKS$1);
	for (let round = 0; round < ROUNDS; round++) {
		let solution;
		try {
			solution = solveLayered(lap, zones);
		} catch (error) {
			if (error instanceof RangeError) return null;
			throw error;
		}
		const next = flowZones(solution, load, stations);
		if (next.length > MOST_ZONES) return null;
		if (next.every(({ flow }) => flow.every((sign) => sign !== 0))) return null;
		if (same(zones, next, lap.length)) return {
			solution,
			zones: next
		};
		zones = next;
	}
	return null;
}
/** Shares of the overlap: zones shorter than this are none, fronts nearer than this have settled. */
const SLIVER = 1e-5;
const SETTLED = 1e-6;
/** Steps along the overlap in which fronts are looked for; each is then found exactly. */
const LOOKS$1 = 32;
/** More zones than this mean that the rounds run away. */
const MOST_ZONES = 16;
/** Zones where each bond flows, from the trial shear of a solution. */
function flowZones(solution, load, stations) {
	const { lap } = solution;
	const yields = lap.sectionAt(0).bonds.map(({ shearYield }) => shearYield);
	const trialAt = (j, x) => solution.at(x, load, 1).stresses.trial[j];
	const trials = solution.along(stations, load, 1).map(({ stresses }) => stresses.trial);
	const signAt = (j, i) => {
		const trial = trials[i][j];
		return Math.abs(trial) > yields[j] ? Math.sign(trial) : 0;
	};
	const fronts = [];
	yields.forEach((limit, j) => {
		for (let i = 1; i < stations.length; i++) {
			const [before, after] = [signAt(j, i - 1), signAt(j, i)];
			if (before === after) continue;
			const sign = before === 0 ? after : before;
			const over = (x) => sign * trialAt(j, x) - limit;
			const x = findRoot(over, stations[i - 1], stations[i], 1e-12 * lap.length);
			fronts.push({
				x,
				bond: j,
				flow: after
			});
		}
	});
	fronts.sort((a, b) => a.x - b.x);
	const flow = yields.map((_limit, j) => signAt(j, 0));
	const zones = [];
	let from = 0;
	for (const front of fronts) {
		if (front.x - from > SLIVER * lap.length) {
			zones.push({
				to: front.x,
				flow: [...flow]
			});
			from = front.x;
		}
		flow[front.bond] = front.flow;
	}
	if (lap.length - from <= SLIVER * lap.length) zones.pop();
	zones.push({
		to: lap.length,
		flow
	});
	return zones;
}
function same(a, b, length) {
	return a.length === b.length && a.every((zone, i) => Math.abs(zone.to - b[i].to) <= SETTLED * length && zone.flow.every((sign, j) => sign === b[i].flow[j]));
}
// src/model/flat-lap/adherend.ts
/** One wall of a flat lap, per unit of its width; wide, so that it bends as a plate. */
/** A number that a flat lap cannot do without. */
function requirePositive(value, input) {
	if (value > 0 && Number.isFinite(value)) return;
	throw new ModelError(input, `A flat lap needs a positive, finite ${input}; it is ${value}.`);
}
function requireFinite(value, input) {
	if (Number.isFinite(value)) return;
	throw new ModelError(input, `A flat lap needs a finite ${input}; it is ${value}.`);
}
// src/model/flat-lap/edge-factor.ts
/**
* Edge-moment factors of a single lap of two equal adherends in tension. The load comes in along one
* adherend and leaves along the other; the joint turns towards the line of the load, and of the
* moment P·e/2 of the undeformed shape only k·P·e/2 is left at each end of the overlap.
*
* Common to both: c half the overlap, P the load per unit width, D the bending stiffness of one
* adherend per unit width, Et³/12(1 − ν²) when it is homogeneous; run-outs long against 1/ξ, ξ² = P/D.
*/
/** Root of the overlap's bending stiffness over an adherend's: two equal plates as one, 8D over D. */
const SOLID_PAIR = 2 * Math.SQRT2;
/**
* M. Goland, E. Reissner (1944), formula from memory: the overlap bends as one solid plate.
*
*   k = cosh(uc) / (cosh(uc) + 2√2·sinh(uc)),  u² = P/8D
*
* written k = 1/(1 + 2√2·tanh(uc)), which cannot overflow. Limits: k → 1 as P → 0, and
* 1/(1 + 2√2) = 0.261 as uc → ∞. Too high for long overlaps of thin walls with a compliant adhesive.
*/
const golandReissnerFactor = (uc, ratio = SOLID_PAIR) => 1 / (1 + ratio * Math.tanh(uc));
/**
* L. J. Hart-Smith (1973, NASA CR-112236), formula from memory: each adherend bends by itself.
*
*   k = 1 / (1 + ξc + (ξc)²/6),  ξ² = P/D
*
* Limits: k → 1 as P → 0, and 0 as ξc → ∞.
*/
const hartSmithFactor = (xiC) => 1 / (1 + xiC + xiC * xiC / 6);
// src/model/flat-lap/edge-moment.ts
/**
* Moments and transverse forces at both ends of the overlap of a flat single lap, by two methods.
*
* x = 0 is the root, where the `root` adherend carries the whole load; x = L the mouth, where the
* `mouth` adherend does. Lever of the load e = (t_root + t_mouth)/2 + h. At each end
*
*   M = k·P·e/2,   V = (P·e − M_root − M_mouth)/L
*
* so that the overlap as a free body is in balance. For P > 0 a positive M puts the bonded face of
* the adherend that carries the load in tension, a positive V pulls that adherend off the other:
* ∫σ dx = V.
*
* Equal adherends: the factors of edge-factor.ts. Unequal adherends, which the sources do not cover:
*
* - Goland and Reissner: their assumption (an overlap that bends as one plate, long run-outs) solved
*   for two different ends. With the overlap's neutral axis e_i from the axis of adherend i,
*   D₁₂ = D₁ + D₂ + (t₁/2 + t₂/2)²·A₁A₂/(A₁ + A₂), u² = P/D₁₂, r_i = √(D₁₂/D_i), T = tanh(uL),
*   q = 1/cosh(uL), deflections in the run-outs that decay as exp(−x·√(P/D_i)) and equal slopes:
*
*     M₁ = P·(e₁T + r₂(e₁ + q·e₂)) / ((1 + r₁r₂)·T + r₁ + r₂),   M₂ with 1 and 2 exchanged
*
*   Equal homogeneous adherends give back the published factor (u, with D₁₂ = 8D, is theirs). As in
*   the source the adhesive adds nothing to D₁₂.
* - Hart-Smith: one factor from the stiffer adherend, the larger of the two, shared between the ends
*   as √D, which is the exact share as P → 0 in any model. A cautious stand-in, not his.
*
* The weaker adherend for both ends would not be cautious: k falls with P/D, and the stiffer run-out
* takes the larger moment. A factor can thus exceed 1 (never 2) at the stiffer end.
*
* Compression has no such factors. With P < 0 the formulas turn complex: nothing decays in a long
* run-out that is compressed, it buckles at once. What would happen depends on the free length and
* the supports, which are not asked for. The moments of the undeformed shape are returned, k the limit
* as P → 0, and `growsWithLoad` says that the true ones are larger: no margin may rest on them.
*/
/** Closer than any measured property: only rounding is forgiven. */
const alike$1 = (a, b) => Math.abs(a - b) <= 1e-6 * Math.max(a, b);
const isBalanced = ({ root, mouth }) => alike$1(root.thickness, mouth.thickness) && alike$1(root.membraneStiffness, mouth.membraneStiffness) && alike$1(root.bendingStiffness, mouth.bendingStiffness);
function check$1({ overlap, gap, root, mouth, load }) {
	requirePositive(overlap, "overlap");
	if (gap !== 0) requirePositive(gap, "gap");
	requireFinite(load, "load");
	for (const wall of [root, mouth]) {
		requirePositive(wall.thickness, "thickness");
		requirePositive(wall.membraneStiffness, "membraneStiffness");
		requirePositive(wall.bendingStiffness, "bendingStiffness");
	}
}
/** D₁₂: both adherends bending as one plate, without the adhesive between them. */
function pairStiffness({ root, mouth }) {
	const share = root.membraneStiffness / (root.membraneStiffness + mouth.membraneStiffness);
	const lever = (root.thickness + mouth.thickness) / 2;
	return root.bendingStiffness + mouth.bendingStiffness + lever * lever * share * mouth.membraneStiffness;
}
function rigidOverlap({ overlap, root, mouth }, tension) {
	const sum = root.membraneStiffness + mouth.membraneStiffness;
	const rootShare = root.membraneStiffness / sum;
	const pair = pairStiffness({
		root,
		mouth
	});
	const r1 = Math.sqrt(pair / root.bendingStiffness);
	const r2 = Math.sqrt(pair / mouth.bendingStiffness);
	const uL = Math.sqrt(tension / pair) * overlap;
	if (r1 === r2 && rootShare === .5) {
		const k = golandReissnerFactor(uL / 2, r1);
		return [k, k];
	}
	const e1 = 2 * (1 - rootShare);
	const e2 = 2 * rootShare;
	const t = Math.tanh(uL);
	const q = 1 / Math.cosh(uL);
	const below = (1 + r1 * r2) * t + r1 + r2;
	return [(e1 * t + r2 * (e1 + q * e2)) / below, (e2 * t + r1 * (e2 + q * e1)) / below];
}
function separateAdherends({ overlap, root, mouth }, tension) {
	const stiffer = Math.max(root.bendingStiffness, mouth.bendingStiffness);
	const k = hartSmithFactor(Math.sqrt(tension / stiffer) * overlap / 2);
	const a = Math.sqrt(root.bendingStiffness);
	const b = Math.sqrt(mouth.bendingStiffness);
	return [k * 2 * a / (a + b), k * 2 * b / (a + b)];
}
function edgeMoments(lap) {
	check$1(lap);
	const lever = (lap.root.thickness + lap.mouth.thickness) / 2 + lap.gap;
	const half = lap.load * lever / 2;
	const tension = Math.max(lap.load, 0);
	const loads = ([root, mouth]) => {
		const transverseForce = tension > 0 ? (2 - root - mouth) * half / lap.overlap : 0;
		requireFinite(transverseForce, "load");
		return {
			root: {
				factor: root,
				moment: root * half
			},
			mouth: {
				factor: mouth,
				moment: mouth * half
			},
			transverseForce
		};
	};
	return {
		golandReissner: loads(rigidOverlap(lap, tension)),
		hartSmith: loads(separateAdherends(lap, tension)),
		lever,
		balanced: isBalanced(lap),
		growsWithLoad: lap.load < 0
	};
}
// src/model/layered/edge-loads.ts
/** Loads at the ends of a flat single lap, from its eccentric load path, for the layered lap. */
const isFlatSingle = (assembly) => assembly.flat && assembly.bonds.length === 1;
/** Both methods' moments for a load on the whole width, N. */
function flatEdgeMoments(assembly, load) {
	const { tube, outers, bonds, overlap } = assembly;
	const { width, gap } = bonds[0];
	const adherend = (part, thickness) => {
		const size = {
			radius: width,
			thickness,
			flat: true
		};
		const shell = shellOf(plateProperties(part.material), size, "both", 0);
		return {
			thickness,
			membraneStiffness: shell.cxx,
			bendingStiffness: shell.bending
		};
	};
	return edgeMoments({
		load: load / width,
		overlap,
		gap,
		root: adherend(outers[0], outers[0].root.thickness),
		mouth: adherend(tube, tube.root.thickness)
	});
}
/** Per unit of load, at that load: the factor falls as the load straightens its own path. */
function flatEdgeLoads(assembly, load, method) {
	const both = flatEdgeMoments(assembly, load);
	const { root, mouth } = method === "hart-smith" ? both.hartSmith : both.golandReissner;
	const half = both.lever / 2;
	return {
		moment: mouth.factor * half,
		shear: (2 - root.factor - mouth.factor) * half / assembly.overlap
	};
}
function harmonicSystem(section) {
	const { shells, bonds } = section;
	const half = 4 * shells.length;
	const size = 2 * half;
	const a = new Float64Array(size * size);
	const put = (row, column, value) => {
		a[row * size + column] += value;
	};
	shells.forEach((shell, i) => {
		const [u, w, phi, v] = [
			4 * i,
			4 * i + 1,
			4 * i + 2,
			4 * i + 3
		];
		const [n, q, m, s] = [
			half + u,
			half + w,
			half + phi,
			half + v
		];
		const { radius, offset } = shell;
		const ratio = shell.cxt / shell.cxx;
		const hoop = shell.ctt - ratio * shell.cxt;
		const bend = 1 / (radius * shell.bending);
		put(u, n, 1 / (radius * shell.cxx) + offset * offset * bend);
		put(u, m, offset * bend);
		put(phi, m, bend);
		put(phi, n, offset * bend);
		put(w, phi, 1);
		put(w, q, 1 / (radius * section.shearFactor * shell.shear));
		put(v, s, 1 / (radius * shell.planeShear));
		put(v, u, 1 / radius);
		put(v, phi, -offset / radius);
		put(n, s, -1 / radius);
		put(m, q, -1);
		put(m, s, offset / radius);
		for (const around of [w, v]) {
			put(u, around, -ratio / radius);
			put(q, around, hoop / radius);
			put(s, around, hoop / radius);
		}
		put(q, n, ratio / radius);
		put(s, n, ratio / radius);
	});
	const count = bonds.length;
	const g = new Float64Array(size);
	if (count === 0) return {
		a,
		g,
		stresses: () => ({
			shear: [],
			peel: [],
			around: []
		})
	};
	const slip = slips(section, 4);
	const peel = peelLaw(section, 4);
	const { stiffness } = shearLaw(section, bonds.map(() => 0));
	const turn = turns(section);
	bonds.forEach((bond, j) => {
		for (let row = 0; row < half; row++) {
			const pull = bond.radius * slip[j * half + row];
			for (let column = 0; pull !== 0 && column < half; column++) for (let k = 0; k < count; k++) put(half + row, column, pull * stiffness[j * count + k] * slip[k * half + column]);
			const twist = bond.radius * turn.stiffness[j] * turn.rows[j * half + row];
			for (let column = 0; twist !== 0 && column < half; column++) put(half + row, column, twist * turn.rows[j * half + column]);
		}
		for (const [row, sign] of [[4 * j + 1, -1], [4 * j + 5, 1]]) for (let column = 0; column < size; column++) put(half + row, column, sign * bond.radius * peel.rows[j * size + column]);
	});
	return {
		a,
		g,
		stresses: (y) => {
			const slipped = bonds.map((_bond, j) => dot(slip, j * half, y, half));
			return {
				shear: bonds.map((_bond, j) => dot(stiffness, j * count, slipped, count)),
				peel: bonds.map((_bond, j) => dot(peel.rows, j * size, y, size)),
				around: bonds.map((_bond, j) => turn.stiffness[j] * dot(turn.rows, j * half, y, half))
			};
		}
	};
}
/** Slip around of each bond as a row over d, and its stiffness. */
function turns({ shells, bonds }) {
	const half = 4 * shells.length;
	const rows = new Float64Array(bonds.length * half);
	return {
		rows,
		stiffness: bonds.map((bond, j) => {
			let flexibility = bond.gap / bond.shearModulus;
			for (const [i, side] of [[j, -1], [j + 1, 1]]) {
				const { radius, thickness, throughShear } = shells[i];
				const lever = thickness / (2 * radius) + bond.gap / (2 * bond.radius);
				rows[j * half + 4 * i + 3] += side - lever;
				rows[j * half + 4 * i + 1] -= lever;
				flexibility += thickness / (3 * throughShear);
			}
			return 1 / flexibility;
		})
	};
}
// src/model/layered/harmonic.ts
/** The layered lap of a sleeve under a unit bending moment: amplitudes at cos θ (around: sin θ). */
const BENT = {
	each: 4,
	thermal: false,
	runOut: (shell, pull, side) => runOut(shell, pull === "held" ? pull : 1 / (Math.PI * shell.radius), side, harmonicSystem(aloneIn(shell)), 4)
};
const NO_PULL = {
	n: 0,
	m: 0
};
function solveHarmonic(lap) {
	const uniform = lap.uniform ? harmonicSystem(lap.sectionAt(0)) : null;
	const stretch = uniform ? uniformStretch(uniform.a, uniform.g, lap.length) : joinAll(taperedStretches(lap, {
		name: "harmonic",
		of: harmonicSystem
	}, 0, lap.length));
	const { half } = stretch;
	const [[d0, d1]] = endDisplacements(lap, stretch.ends, BENT);
	return { along: (x) => {
		const points = [];
		stretch.sample({
			x,
			from: 0,
			to: x.length,
			start: 0
		}, d0, d1, 0, (i, y) => {
			const section = lap.sectionAt(x[i]);
			points.push({
				stresses: (uniform ?? harmonicSystem(section)).stresses(y),
				forces: section.shells.map((shell, wall) => wallForces(shell, y, {
					half,
					each: 4,
					wall
				}, NO_PULL, 0))
			});
		});
		return points;
	} };
}
// src/model/layered/of-state.ts
function layeredState(assembly, adhesives, deltaT, method) {
	const order = layerOrder(assembly);
	const bendsWithLoad = isFlatSingle(assembly);
	const laps = /* @__PURE__ */ new Map();
	const lapAt = (load) => {
		const key = bendsWithLoad ? load : 0;
		let lap = laps.get(key);
		if (!lap) {
			lap = layeredLap(assembly, adhesives, deltaT, bendsWithLoad ? flatEdgeLoads(assembly, load, method) : void 0);
			laps.set(key, lap);
		}
		return lap;
	};
	const solutions = /* @__PURE__ */ new Map();
	const solution = (load) => {
		const lap = lapAt(load);
		let found = solutions.get(lap);
		if (!found) {
			found = solveLayered(lap, elasticZones(lap));
			solutions.set(lap, found);
		}
		return found;
	};
	const fields = /* @__PURE__ */ new Map();
	const states = /* @__PURE__ */ new Map();
	let harmonic = null;
	let bentAtStations = null;
	let last = null;
	return {
		order,
		bendsWithLoad,
		fields: (load) => {
			const solved = solution(load);
			let found = fields.get(solved);
			if (!found) {
				found = fieldsOf(solved, order);
				fields.set(solved, found);
			}
			return found;
		},
		solution,
		bent: (x) => {
			if (assembly.flat) return null;
			harmonic ??= solveHarmonic(lapAt(0));
			if (x) return bentPart(harmonic, order, x);
			bentAtStations ??= bentPart(harmonic, order, fieldStations(assembly.overlap));
			return bentAtStations;
		},
		capped: (load) => {
			const known = states.get(load);
			if (known !== void 0) return known;
			const found = cappedState(lapAt(load), load, last?.zones) ?? (last ? cappedState(lapAt(load), load) : null);
			states.set(load, found);
			last = found ?? last;
			return found;
		}
	};
}
// src/model/margins/state.ts
/** One case in one gap state, ready to be solved at any clocking. */
/** @throws ModelError naming the input that does not fit */
function jointState(joint, adhesive, loadCase, gapState, settings) {
	const assembly = assemble(joint, gapState);
	const state = adhesiveStateAt(adhesive, loadCase.temperature, loadCase.moisture);
	const ledgers = assembly.bonds.map(({ gap }) => ledgerAt(adhesive, gap));
	const adhesives = ledgers.map(({ left }) => knockedDown(state, left));
	const bonds = bondLaws(assembly, adhesives, settings.adherendShear);
	const deltaT = loadCase.temperature - adhesive.stressFreeTemperature;
	return {
		assembly,
		adhesives,
		ledgers,
		bonds,
		deltaT,
		gapState,
		loadCase,
		layered: layeredState(assembly, adhesives, deltaT, settings.edgeMoment ?? "goland-reissner"),
		at: (theta, change = deltaT) => localProblem(assembly, bonds, loadCase.loads, theta, change)
	};
}
// src/model/margins/over-states.ts
/** The modes of a joint in all its states: every load case in every gap state. */
/** Case by case, and in each case gap by gap. */
const statesOf = ({ joint, cases }) => cases.flatMap((_case, caseIndex) => gapStates(joint).map((gapState) => ({
	caseIndex,
	gapState
})));
/**
* Solves one state after another: whoever has heard enough stops listening, and the rest is spared.
* @param states in the order in which they are to be solved; all of them when left out
* @throws ModelError naming the input that does not fit
*/
function* overStates({ joint, adhesive, cases, settings }, options, states) {
	for (const name of states ?? statesOf({
		joint,
		adhesive,
		cases,
		settings
	})) {
		const state = jointState(joint, adhesive, cases[name.caseIndex], name.gapState, settings);
		yield {
			...name,
			state,
			modes: allModes(state, adhesive, settings.factors, options)
		};
	}
}
// src/model/margins/severest-first.ts
/** The extremes bound most modes; what lies between them seldom sets one. */
const rank = {
	min: 0,
	max: 0,
	nominal: 1,
	"thin-side": 2,
	"thick-side": 2
};
/** In and across the plane of bending: no search for the worst, an order needs none. */
const CLOCKINGS = [
	0,
	Math.PI / 2,
	Math.PI,
	3 * Math.PI / 2
];
/** First yield of the bond over what is asked of failure. */
function yieldOverAsked(question, loadCase) {
	const { joint, adhesive, settings } = question;
	const state = jointState(joint, adhesive, loadCase, "nominal", settings);
	const limits = state.bonds.map(({ shearYield }) => shearYield);
	const factors = (state.assembly.flat ? [0] : CLOCKINGS).map((theta) => shearFactor(state.at(theta), limits).factor);
	return Math.min(...factors) / askedFactor("adhesive-strain", loadCase.kind, settings.factors);
}
/** @throws ModelError naming the input that does not fit */
function severestFirst(question, states = statesOf(question)) {
	if (states.length < 2) return [...states];
	const indices = new Set(states.map(({ caseIndex }) => caseIndex));
	const severity = new Map([...indices].map((i) => [i, yieldOverAsked(question, question.cases[i])]));
	const of = ({ caseIndex }) => severity.get(caseIndex);
	return states.toSorted((a, b) => rank[a.gapState] - rank[b.gapState] || (of(a) < of(b) ? -1 : of(a) > of(b) ? 1 : a.caseIndex - b.caseIndex));
}
// src/model/margins/lowest.ts
/**
* The lowest margin of a joint, of one load case or of one corner, and what sets it.
*
* A corner is one state: a case in its surroundings, in a gap state. Its lowest margin is found from
* that state alone, so that it is the same to the last bit whether one corner is asked for, a load
* case or the joint. What other corners have shown already only decides which are left out.
*/
/**
* Modes whose search stops sooner when less is of interest: its last digits then differ. Their
* tolerances are a millionth of the factor, for the trough a hundred-thousandth.
*/
const SEARCHED = /* @__PURE__ */ new Set([
	"adhesive-peel",
	"interlaminar",
	"durability-trough"
]);
/** Those tolerances, with room. */
const ROUGH = 1e-4;
const above = (margin) => margin + ROUGH * (1 + Math.abs(margin));
const solve = ({ joint, adhesive, cases, settings }, name) => jointState(joint, adhesive, cases[name.caseIndex], name.gapState, settings);
/**
* The lowest margin of one state, the shear strength at its own worst clocking where that can be it.
* @param below margins at or above this need not be found
*/
function lowestOf(state, { adhesive, settings }, below) {
	const results = allModes(state, adhesive, settings.factors, { ofInterest: (_mode, known) => Math.min(known, below) });
	let lowest = null;
	for (const result of results) if (!lowest || byMargin(result, lowest) < 0) lowest = result;
	if (!lowest) return null;
	const strain = results.find(({ mode }) => mode === "adhesive-strain");
	if (strain && strain.reached * .9 / strain.asked - 1 < lowest.margin) {
		const refined = refineStrength(state, strain);
		if (byMargin(refined, lowest) < 0) lowest = refined;
	}
	const reach = above(lowest.margin);
	const exact = results.every(({ mode, margin }) => margin > reach || !SEARCHED.has(mode));
	return {
		result: lowest,
		exact
	};
}
/** The lowest margin of one corner; null when no load acts on the joint in it. */
function cornerOf(question, name) {
	const state = solve(question, name);
	const lowest = lowestOf(state, question, Number.POSITIVE_INFINITY);
	return lowest && {
		result: lowest.result,
		caseIndex: name.caseIndex,
		state
	};
}
/** The same where it is below a margin; what is not is left as soon as that is known. */
function cornerBelow(question, name, below) {
	if (below === Number.POSITIVE_INFINITY) return cornerOf(question, name);
	const near = above(below);
	const state = solve(question, name);
	const rough = lowestOf(state, question, near);
	if (!rough || rough.result.margin >= near) return null;
	return rough.exact ? {
		result: rough.result,
		caseIndex: name.caseIndex,
		state
	} : cornerOf(question, name);
}
/** Margins equal to rounding have the same key: the plainer name then stands. */
const key = ({ result }) => Math.round(result.margin * 1e9);
const PLAINEST_FIRST = [
	"nominal",
	"min",
	"max",
	"thin-side",
	"thick-side"
];
/** Lowest first; of corners that are equal to rounding the plainest, then the earliest. */
function byCorner(a, b) {
	const place = ({ result }) => PLAINEST_FIRST.indexOf(result.gapState);
	return key(a) - key(b) || place(a) - place(b) || a.caseIndex - b.caseIndex;
}
/** Of two corners of one load case, the one that stands for it. */
const lowerOf = (a, b) => byCorner(a, b) <= 0 ? a : b;
/**
* The lowest corner of some: of each load case the one that stands for it, of these the lowest.
* @returns null when no load acts on the joint
* @throws ModelError naming the input that does not fit
*/
function lowestCorner(question, names = statesOf(question), { groupOf = () => null, judged } = {}) {
	const ofGroup = /* @__PURE__ */ new Map();
	let below = Number.POSITIVE_INFINITY;
	for (const [i, name] of severestFirst(question, names).entries()) {
		const corner = cornerBelow(question, name, below);
		judged?.(i + 1, names.length);
		if (!corner) continue;
		const group = groupOf(name.caseIndex);
		const known = ofGroup.get(group);
		const lower = known ? lowerOf(known, corner) : corner;
		ofGroup.set(group, lower);
		below = Math.min(below, lower.result.margin);
	}
	return [...ofGroup.values()].reduce((low, one) => low === null || one.result.margin < low.result.margin || one.result.margin === low.result.margin && one.caseIndex < low.caseIndex ? one : low, null);
}
// src/shared/convert-lap.ts
const lapOf = (joint) => joint.type === "sleeve-single" ? joint.side : joint.type;
/** A joint of strips: no axis, no clocking, and a pull for its only load. */
const isFlat = (joint) => joint.type === "flat-single" || joint.type === "flat-double";
/** Laps that the joint can take without becoming another kind of part. */
const lapsFor = (joint) => isFlat(joint) ? ["flat-single", "flat-double"] : [
	"socket",
	"spigot",
	"sleeve-double"
];
function sleeveDouble(joint, before) {
	const { type: _type, side, sleeve, bond, ...kept } = joint;
	const isSocket = side === "socket";
	return {
		...kept,
		type: "sleeve-double",
		spigot: isSocket ? before?.spigot ?? { ...sleeve } : sleeve,
		socket: isSocket ? sleeve : before?.socket ?? { ...sleeve },
		innerBond: isSocket ? before?.innerBond ?? { ...bond } : bond,
		outerBond: isSocket ? bond : before?.outerBond ?? { ...bond }
	};
}
function sleeveSingle(joint, side) {
	const { type: _type, spigot, socket, innerBond, outerBond, ...kept } = joint;
	return side === "socket" ? {
		...kept,
		type: "sleeve-single",
		side,
		sleeve: socket,
		bond: outerBond
	} : {
		...kept,
		type: "sleeve-single",
		side,
		sleeve: spigot,
		bond: innerBond
	};
}
function flatDouble(joint, before) {
	const { type: _type, plate, bond, ...kept } = joint;
	return {
		...kept,
		type: "flat-double",
		lowerStrap: plate,
		upperStrap: before?.upperStrap ?? { ...plate },
		lowerBond: bond,
		upperBond: before?.upperBond ?? { ...bond }
	};
}
function flatSingle(joint) {
	const { type: _type, lowerStrap, upperStrap: _strap, lowerBond, upperBond: _bond, ...kept } = joint;
	return {
		...kept,
		type: "flat-single",
		plate: lowerStrap,
		bond: lowerBond
	};
}
/**
* The same joint with another lap; the joint itself when the lap is not one it can take.
* @param before the joint as it last was with a double lap: its second wall comes back instead of a copy.
*/
function convertLap(joint, lap, before) {
	if (lap === lapOf(joint) || !lapsFor(joint).includes(lap)) return joint;
	switch (joint.type) {
		case "sleeve-single":
			if (lap !== "sleeve-double") return {
				...joint,
				side: lap === "spigot" ? "spigot" : "socket"
			};
			return sleeveDouble(joint, before?.type === "sleeve-double" ? before : void 0);
		case "sleeve-double": return sleeveSingle(joint, lap === "spigot" ? "spigot" : "socket");
		case "flat-single": return flatDouble(joint, before?.type === "flat-double" ? before : void 0);
		case "flat-double": return flatSingle(joint);
	}
}
// src/main/handlers/guarded.ts
/** Turns what the model throws into a reply that names a place in the project. */
/** Where in a joint the model's short names of inputs stand. */
const places = {
	moisture: "adhesive",
	load: "loads",
	joint: ""
};
function guarded(jointIndex, compute) {
	try {
		return compute();
	} catch (error) {
		if (error instanceof ModelError) {
			const field = [
				"joints",
				jointIndex,
				places[error.input] ?? error.input
			].filter((part) => part !== "").join(".");
			return refuse("bad-input", field, error.message);
		}
		if (error instanceof RangeError) return refuse("not-computable", `joints.${jointIndex}`, `This joint could not be computed (${error.message}): change its overlap, walls or loads, and please report the project file.`);
		throw error;
	}
}
// src/main/handlers/labels.ts
function describeJoint(joint) {
	switch (joint.type) {
		case "sleeve-single": return joint.side === "socket" ? "single lap, tube in socket" : "single lap, tube over spigot";
		case "sleeve-double": return "double lap, tube between spigot and socket";
		case "flat-single": return "flat single lap";
		case "flat-double": return "flat double lap, strip between straps";
	}
}
/** Walls of a flat joint: it has no tube. */
const flatParts = /* @__PURE__ */ new Set([
	"strip",
	"plate",
	"lower strap",
	"upper strap"
]);
/** What a margin is called; walls are named, bonds only where there are two. */
function modeLabel(mode, part, atRoot = false) {
	switch (mode) {
		case "adhesive-yield": return "adhesive, yield";
		case "adhesive-strain": return "adhesive, ultimate strain";
		case "adhesive-peel": return "adhesive, peel";
		case "peel-shear": return "adhesive, peel with shear";
		case "interlaminar": return "laminate, between plies";
		case "fracture": return "adhesive, fracture energy";
		case "first-ply": return `${part}, first ply at the ${atRoot ? `${flatParts.has(part) ? "strip" : "tube"} end` : "mouth"}`;
		case "durability-trough": return "durability trough";
		case "cyclic-shear": return "adhesive, cyclic shear";
		case "metal-yield": return `${part}, yield`;
		case "metal-ultimate": return `${part}, ultimate`;
		case "laminate-strength": return `${part}, laminate strength`;
	}
}
/** The state follows the margin as computed, not as rounded for display. */
const marginState = (margin, target) => margin < 0 ? "fails" : margin < target ? "low" : "holds";
// src/model/laminate/symmetry.ts
/** Fibres at 90° and −90°, or at 10° and 190°, lie alike. */
function directionOf(angle) {
	const turned = angle % 180;
	if (turned > 90) return turned - 180;
	return turned <= -90 ? turned + 180 : turned + 0;
}
const near = (a, b, scale) => Math.abs(a - b) <= 1e-9 * scale;
const alike = (a, b) => a.ply === b.ply && near(directionOf(a.angle), directionOf(b.angle), 90) && near(a.thickness, b.thickness, a.thickness);
const degrees$1 = (angle) => `${angle < 0 ? "−" : ""}${Math.abs(angle)}°`;
const TUBE_FACES = ["inside", "outside"];
const STRIP_FACES = ["lower face", "upper face"];
function unsymmetric({ plies }, [first, last]) {
	for (let k = 0; k < Math.floor(plies.length / 2); k++) {
		const inner = plies[k];
		const outer = plies[plies.length - 1 - k];
		if (alike(inner, outer)) continue;
		const [i, o] = [degrees$1(inner.angle), degrees$1(outer.angle)];
		return i === o ? `Not symmetric: plies ${k + 1} and ${plies.length - k}, both ${i}, differ in thickness or material.` : `Not symmetric: ply ${k + 1} from the ${first} is ${i}, ply ${k + 1} from the ${last} ${o}.`;
	}
}
function unbalanced({ plies }) {
	const total = plies.reduce((sum, { thickness }) => sum + thickness, 0);
	for (const { ply, angle } of plies) {
		const direction = directionOf(angle);
		if (direction === 0 || direction === 90) continue;
		const sum = (wanted) => plies.filter((p) => p.ply === ply && near(directionOf(p.angle), wanted, 90)).reduce((all, { thickness }) => all + thickness, 0);
		const [here, there] = [sum(direction), sum(-direction)];
		if (near(here, there, total)) continue;
		const [more, fewer] = here > there ? [direction, -direction] : [-direction, direction];
		return `Not balanced: more at ${degrees$1(more)} than at ${degrees$1(fewer)}.`;
	}
}
function traitsOf(stack, faces = TUBE_FACES) {
	const reasons = [unsymmetric(stack, faces), unbalanced(stack)];
	return {
		symmetric: reasons[0] === void 0,
		balanced: reasons[1] === void 0,
		reasons: reasons.filter((reason) => reason !== void 0)
	};
}
// src/model/margins/governing.ts
/** The worst of each mode and part over every case and gap state. */
/** Rows of the margin list: one for each mode of the bonds, one for each mode and wall. */
const rowOf = ({ mode, part, x }, overlap) => {
	if (!WALL_MODES.has(mode)) return mode;
	return `${mode} ${part} ${mode === "first-ply" && x < overlap / 2 ? "root" : ""}`;
};
/** Margins nearer to each other than this are equal to rounding. */
const EQUAL = 1e-9;
/** Of margins that are equal to rounding the nominal gap has the plainer name, then the earlier case. */
function isWorse(a, b) {
	const difference = a.result.margin - b.result.margin;
	if (Math.abs(difference) > EQUAL) return difference < 0;
	const isNominal = ({ result }) => result.gapState === "nominal";
	if (isNominal(a) !== isNominal(b)) return isNominal(a);
	return a.caseIndex < b.caseIndex;
}
/**
* The worst of each mode and part, lowest margin first.
* @throws ModelError naming the input that does not fit
*/
function governingRows(question, options = {}) {
	const { only, onlyLowest = false, below = Number.POSITIVE_INFINITY } = options;
	const rows = /* @__PURE__ */ new Map();
	let lowest = Number.POSITIVE_INFINITY;
	const ofInterest = (mode, known) => Math.min(below, onlyLowest ? Math.min(lowest, known) : rows.get(mode)?.result.margin ?? Number.POSITIVE_INFINITY);
	const states = options.states ?? severestFirst(question);
	let judged = 0;
	const each = overStates(question, {
		...only ? { only } : {},
		ofInterest
	}, states);
	for (const { caseIndex, state, modes } of each) {
		for (const result of modes) {
			lowest = Math.min(lowest, result.margin);
			const row = rowOf(result, question.joint.overlap);
			const worst = rows.get(row);
			const found = {
				result,
				caseIndex,
				state
			};
			if (!worst || isWorse(found, worst)) rows.set(row, found);
		}
		judged++;
		options.judged?.(judged, states.length);
		if (options.enough?.(lowest)) return sorted(rows.values());
	}
	const strain = rows.get("adhesive-strain");
	if (strain) {
		const result = refineStrength(strain.state, strain.result);
		rows.set("adhesive-strain", {
			...strain,
			result
		});
	}
	return sorted(rows.values());
}
const sorted = (rows) => [...rows].sort((a, b) => byMargin(a.result, b.result));
// src/shared/number-entry.ts
const shape = /^([+-]?)(\d*)(?:\.(\d*))?(?:e([+-]?\d{1,6}))?$/i;
/** Null when the text is not a plain decimal number. */
function parseDecimal(text) {
	const match = shape.exec(text);
	if (!match) return null;
	const [, sign = "", whole = "", fraction = "", exponent = "0"] = match;
	if (whole === "" && fraction === "") return null;
	const digits = `${whole}${fraction}`.replace(/^0+(?=\d)/, "");
	return {
		negative: sign === "-",
		digits,
		exponent: Number(exponent) - fraction.length
	};
}
/** The nearest double, rounded once. */
const decimalToNumber = (decimal) => {
	const value = Number(`${decimal.digits}e${decimal.exponent}`);
	return decimal.negative && value !== 0 ? -value : value;
};
// src/shared/units.ts
/**
* Units as people read them. The document keeps N, mm, MPa, °C; only the edge of the screen converts,
* by moving the decimal point of the written number, so that no figure changes by being looked at.
*/
const byUnit = {
	mm: {
		symbol: "mm",
		shift: 0
	},
	MPa: {
		symbol: "MPa",
		shift: 0
	},
	N: {
		symbol: "kN",
		shift: 3
	},
	"N/mm": {
		symbol: "N/mm",
		shift: 0
	},
	N·mm: {
		symbol: "N·m",
		shift: 3
	},
	"°C": {
		symbol: "°C",
		shift: 0
	},
	"1/K": {
		symbol: "µm/m/K",
		shift: -6
	},
	"kg/m³": {
		symbol: "kg/m³",
		shift: 0
	},
	"1": {
		symbol: "",
		shift: 0
	},
	cycles: {
		symbol: "cycles",
		shift: 0
	}
};
const gigapascal = {
	symbol: "GPa",
	shift: 3
};
/** Adherend moduli are quoted in GPa; those of adhesives, a hundred times smaller, in MPa. */
const byName = {
	modulus: gigapascal,
	shearModulus: gigapascal
};
/** Decimals shown at least, so that columns of like figures line up. */
const decimals = {
	overlap: 1,
	outsideDiameter: 1,
	wall: 1,
	width: 1,
	gap: 2,
	gapTolerance: 2,
	offset: 2,
	force: 1,
	shear: 1
};
const displayUnit = (name) => byName[name] ?? byUnit[quantities[name].unit];
/** `12.5` moved three places right is `12500`; the digits themselves never change. */
function written$2(value, shift, atLeast) {
	const decimal = parseDecimal(String(value));
	if (!decimal) return String(value);
	const exponent = decimal.digits === "0" ? 0 : decimal.exponent + shift;
	const digits = decimal.digits;
	const sign = decimal.negative && digits !== "0" ? "−" : "";
	const magnitude = digits.length + exponent;
	if (magnitude > 12 || magnitude < -6) {
		const [first = "0", ...rest] = digits;
		const tail = rest.join("").replace(/0+$/, "");
		return `${sign}${first}${tail && `.${tail}`}e${magnitude - 1}`.replace("e-", "e−");
	}
	if (exponent >= 0) return sign + (digits + "0".repeat(exponent)) + (atLeast > 0 ? `.${"0".repeat(atLeast)}` : "");
	const padded = digits.padStart(1 - exponent, "0");
	const whole = padded.slice(0, padded.length + exponent);
	const fraction = padded.slice(padded.length + exponent).replace(/0+$/, "").padEnd(atLeast, "0");
	return sign + whole + (fraction && `.${fraction}`);
}
/** The stored value in display units, every digit of it: typing it back gives the same value. */
const toDisplay = (name, value) => written$2(value, -displayUnit(name).shift, decimals[name] ?? 0);
/** The stored value as a number in display units, for axes and sliders. */
const inDisplayUnit = (name, value) => {
	const decimal = parseDecimal(String(value));
	if (!decimal) return value;
	return decimalToNumber({
		...decimal,
		exponent: decimal.exponent - displayUnit(name).shift
	});
};
// src/shared/words.ts
const lapWords = {
	socket: "single, tube in socket",
	spigot: "single, tube over spigot",
	"sleeve-double": "double, spigot and socket",
	"flat-single": "single",
	"flat-double": "double"
};
const gapWords = {
	min: "gap min",
	nominal: "gap nominal",
	max: "gap max",
	"thin-side": "offset, thin side",
	"thick-side": "offset, thick side"
};
const placeWords = {
	root: "root",
	mouth: "mouth",
	within: "within"
};
/** `+0.42`, `−0.08`; the sign is the true one even where two decimals round to nothing. */
function signed(value) {
	const size = Math.abs(value);
	const sign = value < 0 ? "−" : "+";
	return size >= 99.995 ? `> ${sign}99` : `${sign}${size.toFixed(2)}`;
}
/** Three significant figures, never in powers: for readouts and labels beside a drawing. */
function figure(value) {
	const size = Math.abs(value);
	const decimals = size >= 100 ? 0 : size >= 10 ? 1 : 2;
	const text = size.toFixed(decimals);
	return (value < 0 && Number(text) !== 0 ? "−" : "") + text;
}
const millimetres = (value) => `${value < 0 ? "−" : ""}${Math.abs(value).toFixed(1)} mm`;
/** −0 and 360 are both 0°. */
const clocking = (theta) => {
	const degrees = Math.round(theta) % 360;
	return `${degrees < 0 ? "−" : ""}${Math.abs(degrees)}°`;
};
const environment = (temperature, moisture) => `${toDisplay("temperature", temperature)} °C ${moisture}`;
const kindOf = (load) => load.kind === "cyclic" ? `cyclic, ${power(load.cycles)} cycles` : load.kind;
/** 10 000 000 as 1e7; small or uneven counts as they are. */
function power(value) {
	const exponent = Math.floor(Math.log10(value));
	const mantissa = value / 10 ** exponent;
	return exponent >= 4 && Number(mantissa.toFixed(2)) === mantissa ? `${mantissa}e${exponent}` : String(value);
}
/** Where along the overlap: at an end, or so far from the root. */
const placeText = (margin) => margin.place === "within" ? `at ${millimetres(margin.x)}` : placeWords[margin.place];
/** `Gust, at Cold soak`: a case, and the condition it is judged in where that is not its own. */
const caseText = (caseName, conditionName) => conditionName === null ? caseName : `${caseName}, at ${conditionName}`;
/** Where a margin is reached; a flat joint has no clocking. */
const whereText = (margin, flat) => [flat ? placeText(margin) : `${placeText(margin)}, ${clocking(margin.theta)}`, gapWords[margin.gapState]].join(" · ");
const edgeMomentWords = {
	"goland-reissner": "Goland and Reissner",
	"hart-smith": "Hart-Smith"
};
/** R/t for lamination theory of flat plies in a tube. */
const FLAT_PLIES = 10;
/** Overlap over the thickest wall, for theories of walls as beams and shells. */
const LONG_ENOUGH = 3;
/** From here on the layered model meets finite elements at a built-in root (the verification book). */
const ROOT_GAPS = 5;
/** Walls over the gap, for a bond that is a thin layer between them. */
const THIN_BOND = 2;
const layered = (mode) => PEEL_MODES.has(mode) || WALL_MODES.has(mode);
/** With the sign that the rest of the program writes. */
const short = (value) => String(Number(value.toPrecision(3))).replace("-", "−");
function domainsOf(result, state) {
	const { assembly, ledgers, adhesives, loadCase } = state;
	const parts = [assembly.tube, ...assembly.outers];
	const domains = [];
	const thickest = Math.max(...parts.map(({ root, mouth }) => Math.max(root.thickness, mouth.thickness)));
	domains.push({
		code: "short-overlap",
		text: `the overlap is at least ${LONG_ENOUGH} times the thickest wall (here ${short(assembly.overlap / thickest)} times)`,
		inside: assembly.overlap >= LONG_ENOUGH * thickest
	});
	if (!assembly.flat) {
		const worst = parts.map(({ name, root }) => ({
			name,
			ratio: root.meanRadius / root.thickness
		})).reduce((a, b) => b.ratio < a.ratio ? b : a);
		domains.push({
			code: "thick-wall",
			text: `every wall is thin, mean radius at least 5 times the wall (the ${worst.name}: ${short(worst.ratio)})`,
			inside: worst.ratio >= 5
		});
	}
	domains.push({
		code: "outside-table",
		text: `${short(loadCase.temperature)} °C lies within the adhesive's table of properties`,
		inside: !adhesives[0].outsideTable
	}, {
		code: "gap-outside-table",
		text: `the gap (${assembly.bonds.map(({ gap }) => short(gap)).join(" and ")} mm) lies within the table of strength against gap`,
		inside: ledgers.every(({ gapOutsideTable }) => !gapOutsideTable)
	});
	if (layered(result.mode)) {
		const thinnest = Math.min(...assembly.bonds.map(({ gap }) => Math.min(...parts.map(({ mouth }) => mouth.thickness)) / gap));
		domains.push({
			code: "thick-bond",
			text: `the bond is a thin layer, every wall at least ${THIN_BOND} times the gap (here ${short(thinnest)} times)`,
			inside: thinnest >= THIN_BOND
		}, {
			code: "adhesive-moduli",
			text: `the adhesive's two moduli fit a solid, E/2G − 1 from 0 to ${LARGEST_POISSON} (here ${short(adhesives[0].modulus / (2 * adhesives[0].shearModulus) - 1)})`,
			inside: fitsSolid(adhesives[0])
		});
	}
	if (PEEL_MODES.has(result.mode) && assembly.bonds.length === 2) {
		const gap = Math.max(...assembly.bonds.map((bond) => bond.gap));
		domains.push({
			code: "built-in-root",
			text: `the place is at least ${ROOT_GAPS} gaps from the root, where the walls are built into solid metal: nearer, the model does not resolve peel (here ${short(result.x)} mm)`,
			inside: result.x >= ROOT_GAPS * gap
		});
	}
	if (layered(result.mode) && isFlatSingle(assembly)) {
		const edge = flatEdgeMoments(assembly, loadCase.loads.force);
		domains.push({
			code: "unbalanced-lap",
			text: "both adherends of the single lap are alike, as the published edge moments have it",
			inside: edge.balanced
		}, {
			code: "compressed-lap",
			text: "the single lap is pulled: under compression its edge moment grows with the load",
			inside: !edge.growsWithLoad
		});
	}
	if (result.mode === "first-ply" && !assembly.flat) {
		const { root } = assembly.tube;
		domains.push({
			code: "curved-plies",
			text: `the tube is wide enough to take its plies as flat, R/t at least ${FLAT_PLIES} (here ${short(root.meanRadius / root.thickness)})`,
			inside: root.meanRadius >= FLAT_PLIES * root.thickness
		});
	}
	if (result.mode === "adhesive-strain") domains.push({
		code: "whole-bond-flows",
		text: "part of the bond stays elastic up to its strength: creep has something to hold on to",
		inside: !result.wholeBondFlows
	});
	return domains;
}
function fitsSolid(adhesive) {
	const raw = adhesive.modulus / (2 * adhesive.shearModulus) - 1;
	return Math.abs(raw - adhesivePoisson(adhesive)) < 1e-12;
}
// src/main/handlers/validity.ts
const marginFlags = (result, state) => domainsOf(result, state).filter(({ inside }) => !inside).map(({ code, text }) => ({
	code,
	message: `Outside the domain, which asks that ${text}.`
}));
// src/main/handlers/margins.ts
/**
* The worst of each mode and part, lowest margin first.
* @param onlyLowest when just the first row matters: searches that cannot change it are left out
* @param only the modes to compute; all when left out
* @param judged told after each state (a case in a gap state) how many are judged, of how many
*/
const governingModes = (resolved, settings, onlyLowest = false, only, judged) => governingRows(questionOf(resolved, settings), {
	onlyLowest,
	...only ? { only } : {},
	...judged ? { judged } : {}
}).map((row) => withCase(row, resolved));
/** What the model is asked about a joint of the project. */
const questionOf = ({ input: joint, adhesive, cases }, settings) => ({
	joint,
	adhesive,
	cases: cases.map(({ input }) => input),
	settings
});
const withCase = ({ result, state, caseIndex }, { cases }) => {
	const { loadCase, condition } = cases[caseIndex];
	return {
		result,
		state,
		loadCase,
		condition
	};
};
const degrees = (radians) => radians * 180 / Math.PI;
const radians = (angle) => angle * Math.PI / 180;
function remarkOf({ mode, shearFirst }) {
	if (shearFirst) return "the bond fails in shear before";
	switch (mode) {
		case "adhesive-yield": return "first yield of the bond";
		case "peel-shear": return "first yield with peel";
		case "adhesive-peel":
		case "interlaminar": return "shear capped at yield";
		default: return "";
	}
}
/** Which ply fails first, and what both criteria say. */
function plyRemark({ plies, asked }, flat) {
	if (!plies) return "";
	const margin = (factor) => Number.isFinite(factor) ? signed(factor / asked - 1) : "none";
	const [first] = flat ? STRIP_FACES : TUBE_FACES;
	const angle = `${plies.angle}°`.replace("-", "−");
	return `ply ${plies.ply + 1} from the ${first}, ${angle}: Tsai-Wu ${margin(plies.tsaiWu)}, maximum strain ${margin(plies.maximumStrain)}`;
}
/** Between plies the laminate's strength stands behind the figure; elsewhere the part's own. */
function typicalBehind({ mode, part }, { typical }) {
	if (WALL_MODES.has(mode)) return typical.has(part);
	return typical.has("adhesive") || mode === "interlaminar" && typical.size > 0;
}
function toMargin({ result, loadCase, condition, state }, resolved, target, remark) {
	const short = result.margin < target ? ": too short" : "";
	const flows = result.wholeBondFlows ? `fails when the whole bond flows${short}` : "";
	return {
		mode: result.mode,
		label: modeLabel(result.mode, result.part, result.x < resolved.input.overlap / 2),
		margin: result.margin,
		state: marginState(result.margin, target),
		reached: result.reached,
		asked: result.asked,
		caseId: loadCase.id,
		caseName: loadCase.name,
		conditionId: condition?.id ?? null,
		conditionName: condition?.name ?? null,
		gapState: result.gapState,
		place: result.place,
		x: result.x,
		theta: degrees(result.theta),
		part: result.part,
		typical: typicalBehind(result, resolved),
		remark: remark || flows || plyRemark(result, state.assembly.flat) || remarkOf(result),
		flags: marginFlags(result, state)
	};
}
// src/model/laminate/constants.ts
/**
* Engineering constants of a laminate: the homogeneous wall that answers as the stack does.
*/
/** What rounding leaves of a coupling that is zero. */
const NEGLIGIBLE = 1e-9;
const largest$1 = (p) => Math.max(p.c11, p.c22, p.c66);
const largestAny = (p) => Math.max(...Object.values(p).map(Math.abs));
/**
* From a = A⁻¹: Ex = 1/(t·a11), Ey = 1/(t·a22), Gxy = 1/(t·a66), νxy = −a12/a11, α = a·N_T.
* A alone: no curvature, which is exact when B = 0.
*/
function inPlaneConstants(stiffness) {
	const { thickness: t, a, b } = stiffness;
	const flexibility = invertPlane(a);
	const [axialExpansion, hoopExpansion, shearExpansion] = times(flexibility, stiffness.thermalForce);
	const scale = largest$1(a);
	return {
		axialModulus: 1 / (t * flexibility.c11),
		hoopModulus: 1 / (t * flexibility.c22),
		shearModulus: 1 / (t * flexibility.c66),
		poisson: -flexibility.c12 / flexibility.c11,
		axialExpansion,
		hoopExpansion,
		shearExpansion,
		curvatureHeld: largestAny(b) > NEGLIGIBLE * scale * t,
		shearCoupled: Math.max(Math.abs(a.c16), Math.abs(a.c26)) > NEGLIGIBLE * scale
	};
}
/**
* D* = D − B·A⁻¹·B: bending stiffness of a wall whose middle surface is free to stretch (N = 0).
* D itself holds it from stretching; the two agree when B = 0.
*/
const reducedBending = ({ a, b, d }) => released(d, b, a);
/** P − B·Q⁻¹·B: stiffness P where what couples to it by B is free. */
function released(p, b, q) {
	const flexibility = invertPlane(q);
	const [b1, b2, b6] = rowsOf(b);
	const less = (row, column) => dot$1(row, times(flexibility, column));
	return {
		c11: p.c11 - less(b1, b1),
		c12: p.c12 - less(b1, b2),
		c22: p.c22 - less(b2, b2),
		c16: p.c16 - less(b1, b6),
		c26: p.c26 - less(b2, b6),
		c66: p.c66 - less(b6, b6)
	};
}
function flexuralConstants(stiffness) {
	const reduced = reducedBending(stiffness);
	const flexibility = invertPlane(reduced);
	const factor = 12 / stiffness.thickness ** 3;
	return {
		bendingStiffness: stiffness.d.c11,
		reducedBendingStiffness: reduced.c11,
		axialModulus: factor / flexibility.c11,
		hoopModulus: factor / flexibility.c22,
		shearModulus: factor / flexibility.c66
	};
}
/**
* Through the thickness, far from edges: σ3 and the transverse shears are the same in every ply,
* in-plane strain is the same in every ply (no curvature), and the wall carries no in-plane force.
*
* A ply under σ3 and ΔT takes σ = Q̄·(ε − β·σ3 − α·ΔT) in its plane and
* ε3 = βᵀ·σ + σ3/E2 + α2·ΔT, β its in-plane strain per unit σ3, turned. With ⟨·⟩ the mean
* over the thickness and no force, ε = ⟨Q̄⟩⁻¹(⟨Q̄β⟩σ3 + ⟨Q̄α⟩ΔT), so
*
*   1/E3 = 1/E2 − ⟨βᵀQ̄β⟩ + ⟨Q̄β⟩ᵀ⟨Q̄⟩⁻¹⟨Q̄β⟩
*   α3   = α2 − ⟨βᵀQ̄α⟩ + ⟨Q̄β⟩ᵀ⟨Q̄⟩⁻¹⟨Q̄α⟩
*
* Exact for the transversely isotropic ply. One angle alone gives E2 and α2; crossed plies hold each
* other in the plane, so α3 exceeds α2: what the plane keeps back goes through the thickness.
*
* Shear: uniform τxz gives 1/Gxz = ⟨cos²/G12 + sin²/G23⟩ (and Gyz with the two exchanged), τyz = 0:
* the shear the other way is left free. An interlaminar failure takes the weakest ply; the ply's S13
* serves for shear in either direction, as S23 is rarely measured.
*/
function throughConstants(stack) {
	const total = thicknessOf(stack);
	let stiffness = zeroPlane;
	let pressed = [
		0,
		0,
		0
	];
	let heated = [
		0,
		0,
		0
	];
	let compliance = 0;
	let expansion = 0;
	let axialShear = 0;
	let hoopShear = 0;
	for (const { ply, angle, thickness } of stack.plies) {
		const share = thickness / total;
		const turn = turnBy(angle);
		const q = turnStiffness(reducedStiffness(ply), turn);
		const beta = turnStrain(throughCompliance(ply), turn);
		const alpha = turnStrain(expansionOf(ply), turn);
		const qBeta = times(q, beta);
		stiffness = addPlane(stiffness, q, share);
		pressed = addTriple(pressed, qBeta, share);
		heated = addTriple(heated, times(q, alpha), share);
		compliance += share * (1 / ply.transverseModulus - dot$1(beta, qBeta));
		expansion += share * (ply.transverseExpansion - dot$1(alpha, qBeta));
		const cc = turn.cos ** 2;
		const ss = turn.sin ** 2;
		axialShear += share * (cc / ply.shearModulus + ss / ply.transverseShearModulus);
		hoopShear += share * (ss / ply.shearModulus + cc / ply.transverseShearModulus);
	}
	const relaxed = times(invertPlane(stiffness), pressed);
	return {
		modulus: 1 / (compliance + dot$1(relaxed, pressed)),
		expansion: expansion + dot$1(relaxed, heated),
		axialShearModulus: 1 / axialShear,
		hoopShearModulus: 1 / hoopShear,
		interlaminarTension: Math.min(...stack.plies.map(({ ply }) => ply.interlaminarTension)),
		interlaminarShear: Math.min(...stack.plies.map(({ ply }) => ply.interlaminarShear))
	};
}
// src/model/laminate/material.ts
/** The homogeneous wall that stands for a laminate in a joint. */
/**
* @param angles degrees from the tube's axis, inside to outside; plies are scaled evenly to the wall
* @throws ModelError for a ply that could not exist, an empty stack, or no wall
*/
function laminateMaterial(ply, angles, wall) {
	checkPly(ply);
	const stack = makeStack(ply, angles, wall);
	const stiffness = stiffnessOf$1(stack);
	const plane = inPlaneConstants(stiffness);
	const bending = flexuralConstants(stiffness);
	const through = throughConstants(stack);
	const room = 1 - plane.poisson ** 2 * plane.hoopModulus / plane.axialModulus;
	return {
		axialModulus: plane.axialModulus,
		hoopModulus: plane.hoopModulus,
		shearModulus: plane.shearModulus,
		poisson: plane.poisson,
		axialExpansion: plane.axialExpansion,
		hoopExpansion: plane.hoopExpansion,
		throughShearModulus: through.axialShearModulus,
		throughModulus: through.modulus,
		throughExpansion: through.expansion,
		interlaminarTension: through.interlaminarTension,
		interlaminarShear: through.interlaminarShear,
		bendingStiffness: bending.bendingStiffness,
		reducedBendingStiffness: bending.reducedBendingStiffness,
		bendingRatio: 12 * bending.reducedBendingStiffness * room / (plane.axialModulus * wall ** 3),
		stack,
		scale: wall / (ply.thickness * angles.length)
	};
}
// src/shared/surroundings.ts
/**
* Its own (null), and where it is judged in every condition those of the project's that differ from
* its own and from each other.
*/
function surroundingsOf({ conditions = [] }, loadCase) {
	if (!loadCase.everyCondition) return [null];
	const seen = [loadCase];
	const others = [];
	for (const condition of conditions) {
		const { temperature, moisture } = condition;
		if (seen.some((one) => one.temperature === temperature && one.moisture === moisture)) continue;
		seen.push(condition);
		others.push(condition);
	}
	return [null, ...others];
}
// src/main/handlers/resolve.ts
const isTypical = (item) => item.source.kind === "typical" || item.source.kind === "memory";
/** Names that the model gives to the walls, in the order of `adherendReferences`. */
const partNames = {
	"sleeve-single": ["tube", "sleeve"],
	"sleeve-double": [
		"tube",
		"spigot",
		"socket"
	],
	"flat-single": ["strip", "plate"],
	"flat-double": [
		"strip",
		"lower strap",
		"upper strap"
	]
};
/** The project must have passed `readProject`: every reference exists. */
function resolveJoint(project, index) {
	const joint = project.joints[index];
	const adherend = (id) => project.adherends.find((a) => a.id === id);
	const material = (id, thickness) => materialOf(project, adherend(id), thickness);
	const wall = ({ adherend: id, atRoot, atMouth }) => ({
		material: material(id, (atRoot + atMouth) / 2),
		atRoot,
		atMouth
	});
	const adhesive = project.adhesives.find(({ id }) => id === joint.adhesive);
	const typical = /* @__PURE__ */ new Set();
	adherendReferences(joint).forEach(([, id], i) => {
		if (isTypical(adherend(id))) typical.add(partNames[joint.type][i]);
	});
	if (isTypical(adhesive)) typical.add("adhesive");
	const cases = joint.loads.flatMap((load) => {
		const loadCase = project.loadCases.find(({ id }) => id === load.case);
		const { force } = load;
		const { moment, torque, shear } = "moment" in load ? load : {
			moment: 0,
			torque: 0,
			shear: 0
		};
		const loads = {
			force,
			moment,
			torque,
			shear
		};
		return surroundingsOf(project, loadCase).map((condition) => {
			const { temperature, moisture } = condition ?? loadCase;
			const input = {
				loads,
				kind: loadCase.kind,
				temperature,
				moisture
			};
			return {
				loadCase,
				condition,
				input: loadCase.kind === "cyclic" ? {
					...input,
					cycles: loadCase.cycles
				} : input
			};
		});
	});
	return {
		index,
		joint,
		input: jointInput(joint, material, wall),
		adhesive,
		cases,
		typical
	};
}
/** A laminate's properties follow from its plies, scaled to the wall they make. */
function materialOf(project, adherend, thickness) {
	if (adherend.kind !== "laminate") return adherend;
	const ply = project.plies.find(({ id }) => id === adherend.ply);
	const stack = readStack(adherend.stack);
	if (!stack.ok) throw new RangeError(stack.message);
	return {
		kind: "laminate",
		...laminateMaterial(ply, stack.angles, thickness)
	};
}
function jointInput(joint, material, wall) {
	const { overlap } = joint;
	switch (joint.type) {
		case "sleeve-single": {
			const { type, side, tube, sleeve, bond, offset } = joint;
			return {
				type,
				side,
				overlap,
				tube: {
					...tube,
					material: material(tube.adherend, tube.wall)
				},
				sleeve: wall(sleeve),
				bond,
				offset
			};
		}
		case "sleeve-double": {
			const { type, tube, spigot, socket, innerBond, outerBond, offset } = joint;
			return {
				type,
				overlap,
				tube: {
					...tube,
					material: material(tube.adherend, tube.wall)
				},
				spigot: wall(spigot),
				socket: wall(socket),
				innerBond,
				outerBond,
				offset
			};
		}
		case "flat-single": {
			const { type, width, strip, plate, bond } = joint;
			return {
				type,
				overlap,
				width,
				strip: {
					...strip,
					material: material(strip.adherend, strip.thickness)
				},
				plate: wall(plate),
				bond
			};
		}
		case "flat-double": {
			const { type, width, strip, lowerStrap, upperStrap, lowerBond, upperBond } = joint;
			return {
				type,
				overlap,
				width,
				strip: {
					...strip,
					material: material(strip.adherend, strip.thickness)
				},
				lowerStrap: wall(lowerStrap),
				upperStrap: wall(upperStrap),
				lowerBond,
				upperBond
			};
		}
	}
}
// src/main/handlers/corners.ts
/**
* The lowest margin of a joint over all its corners: the lowest of its cells, and found sooner.
* @param judged told after each corner how many are judged, of how many
*/
function lowestOfJoint(resolved, settings, judged) {
	const question = questionOf(resolved, settings);
	const lowest = lowestCorner(question, statesOf(question), {
		groupOf: (caseIndex) => resolved.cases[caseIndex].loadCase,
		...judged ? { judged } : {}
	});
	return lowest && withCase(lowest, resolved);
}
/**
* @param list whether every corner is asked for, not only the lowest of each cell
* @param told how many cells are done, with the part of the one that is at work, and its load case
*/
function cellsOf(resolved, { settings }, list, told) {
	const question = questionOf(resolved, settings);
	const brief = (row) => briefly(toMargin(withCase(row, resolved), resolved, settings.targetMargin, ""));
	const corners = [];
	const cells = resolved.joint.loads.map(({ case: caseId }, i) => {
		const names = statesOf(question).filter(({ caseIndex }) => resolved.cases[caseIndex].loadCase.id === caseId);
		const { name: caseName } = resolved.cases[names[0].caseIndex].loadCase;
		const judged = (done) => told(i + done / names.length, caseName);
		judged(0);
		let lowest = null;
		if (list) for (const [k, name] of severestFirst(question, names).entries()) {
			const corner = cornerOf(question, name);
			judged(k + 1);
			if (!corner) continue;
			corners.push(corner);
			lowest = lowest ? lowerOf(lowest, corner) : corner;
		}
		else lowest = lowestCorner(question, names, { judged });
		return {
			caseId,
			lowest: lowest && brief(lowest),
			states: names.length
		};
	});
	return {
		cells,
		lowest: cells.reduce((low, cell) => cell.lowest && (!low || cell.lowest.margin < low.margin) ? cell.lowest : low, null),
		states: cells.reduce((sum, cell) => sum + cell.states, 0),
		corners: list ? corners.sort(byCorner).map(brief) : null
	};
}
/** Only what a table shows: a long project has ten thousand cells. */
const briefly = ({ reached: _reached, asked: _asked, remark: _remark, flags: _flags, ...rest }) => rest;
/** Progress counts cells; a joint without a load case is a step too. */
const stepsOf$1 = ({ loads }) => Math.max(1, loads.length);
const countStates$1 = (joints) => {
	const counts = {
		fails: 0,
		low: 0,
		holds: 0
	};
	for (const { lowest } of joints) if (lowest) counts[lowest.state]++;
	return counts;
};
const countLooks = (joints) => joints.reduce((sum, { states }) => sum + states, 0);
/**
* @param jointId must be one of the project's
* @param context with a `share`, only every so manyth joint is judged: `mergeCorners` puts them together
*/
function corners(project, { jointId }, context = unwatched) {
	const { progress, share = {
		part: 0,
		of: 1
	} } = context;
	const wanted = [...project.joints.entries()].filter(([, { id }]) => jointId === void 0 || id === jointId);
	const total = wanted.reduce((sum, [, joint]) => sum + stepsOf$1(joint), 0);
	let done = 0;
	let listed = null;
	const joints = [];
	for (const [place, [index, joint]] of wanted.entries()) {
		if (place % share.of !== share.part) continue;
		const told = (cells, caseName) => progress(done + cells, total, `${joint.name}, ${caseName}`);
		const reply = guarded(index, () => ok(cellsOf(resolveJoint(project, index), project, jointId !== void 0, told)));
		done += stepsOf$1(joint);
		progress(done, total, joint.name);
		const computed = reply.ok ? reply.value : {
			cells: [],
			lowest: null,
			states: 0,
			corners: null
		};
		listed = computed.corners;
		joints.push({
			jointId: joint.id,
			name: joint.name,
			description: describeJoint(joint),
			flat: isFlat(joint),
			cells: computed.cells,
			lowest: computed.lowest,
			states: computed.states,
			refused: reply.ok ? null : reply.error
		});
	}
	const acting = new Set(wanted.flatMap(([, { loads }]) => loads.map((load) => load.case)));
	return {
		project: project.name,
		targetMargin: project.settings.targetMargin,
		cases: project.loadCases.flatMap(({ id, name }) => acting.has(id) ? [{
			caseId: id,
			name
		}] : []),
		joints,
		counts: countStates$1(joints),
		states: countLooks(joints),
		corners: listed,
		modelVersion: "2"
	};
}
// src/model/laminate/free-constants.ts
/**
* Engineering constants of a wall that is free to bend and twist, beside those of `constants.ts`,
* which hold the curvature suppressed. The two agree when B = 0.
*/
/**
* From the inverse of the whole ABD matrix, no moment: a* = (A − B·D⁻¹·B)⁻¹, then as from A⁻¹:
* Ex = 1/(t·a*11), Ey = 1/(t·a*22), Gxy = 1/(t·a*66), νxy = −a*12/a*11, α = a*·(N_T − B·D⁻¹·M_T).
* Classical lamination theory.
*/
function freeConstants(stiffness) {
	const { thickness: t, a, b, d, thermalForce, thermalMoment } = stiffness;
	const flexibility = invertPlane(released(a, b, d));
	const force = addTriple(thermalForce, times(b, times(invertPlane(d), thermalMoment)), -1);
	const [axialExpansion, hoopExpansion] = times(flexibility, force);
	return {
		axialModulus: 1 / (t * flexibility.c11),
		hoopModulus: 1 / (t * flexibility.c22),
		shearModulus: 1 / (t * flexibility.c66),
		poisson: -flexibility.c12 / flexibility.c11,
		axialExpansion,
		hoopExpansion
	};
}
/** A constant that changes by less than this share when the wall is let free is not told twice. */
const DIFFERS = .01;
/** The free constants that differ by more than 1 % from those held; none when B = 0. */
function freeDifferences(stiffness) {
	const held = inPlaneConstants(stiffness);
	if (!held.curvatureHeld) return {};
	const free = freeConstants(stiffness);
	return Object.fromEntries(Object.entries(free).filter(([key, value]) => {
		const other = held[key];
		return Math.abs(value - other) > DIFFERS * Math.max(Math.abs(value), Math.abs(other));
	}));
}
// src/shared/laminate-words.ts
const constantQuantities = {
	axialModulus: "modulus",
	hoopModulus: "modulus",
	shearModulus: "shearModulus",
	poisson: "laminatePoisson",
	axialExpansion: "expansion",
	hoopExpansion: "expansion"
};
/** @param across θ for a tube, y for a strip */
const constantSymbols = (across) => ({
	axialModulus: "Ex",
	hoopModulus: `E${across}`,
	shearModulus: `Gx${across}`,
	poisson: `νx${across}`,
	axialExpansion: "αx",
	hoopExpansion: `α${across}`
});
const acrossOf = (flat) => flat ? "y" : "θ";
/** Which assumption stands behind the constants of a stack with B ≠ 0. */
const CURVATURE_HELD = "The constants hold the curvature suppressed (membrane constants, from A)";
function written$1(name, value) {
	const quantity = constantQuantities[name];
	const { symbol } = displayUnit(quantity);
	const text = figure(inDisplayUnit(quantity, value));
	return symbol === "" ? text : `${text} ${symbol}`;
}
/**
* `Ex 71.9 GPa against 35.1 GPa free to bend and twist, νxθ 0.31 against 0.10`; empty where nothing
* differs.
*/
function heldAgainstFree(held, free, flat) {
	const symbols = constantSymbols(acrossOf(flat));
	return Object.keys(symbols).flatMap((name) => {
		const value = free[name];
		if (value === void 0) return [];
		return `${symbols[name]} ${written$1(name, held[name])} against ${written$1(name, value)}`;
	}).map((text, i) => i === 0 ? `${text} free to bend and twist` : text).join(", ");
}
// src/main/handlers/stack-flags.ts
/** Farther from its plies' own thickness than this, a wall is not what was laid up. */
const SCALED = .01;
/** Farther than this, the stack or the wall is likely a mistake (common practice, no source). */
const FAR = .1;
function stackFlags({ tube, outers, flat }) {
	return [tube, ...outers].flatMap(({ name, material }) => material.kind === "laminate" ? [...coupledFlags(name, material, flat), ...scaledFlags(name, material)] : []);
}
function coupledFlags(name, material, flat) {
	const { symmetric, reasons } = traitsOf(material.stack, flat ? STRIP_FACES : TUBE_FACES);
	return reasons.map((reason) => {
		const unbalanced = reason.startsWith("Not balanced");
		const held = unbalanced || symmetric ? "" : ` ${heldText(material, flat)}`;
		return {
			code: unbalanced ? "stack-unbalanced" : "stack-unsymmetric",
			message: `The ${name}'s stack: ${reason} It bends or twists as it stretches, which the joint's model leaves out.${held}`
		};
	});
}
function heldText(material, flat) {
	const both = heldAgainstFree(material, freeDifferences(stiffnessOf$1(material.stack)), flat);
	return `${CURVATURE_HELD}${both === "" ? "" : `: ${both}`}.`;
}
function scaledFlags(name, { stack, scale }) {
	if (Math.abs(scale - 1) <= SCALED) return [];
	const { plies } = stack;
	const wall = plies.reduce((sum, { thickness }) => sum + thickness, 0);
	const mm = (value) => `${Number(value.toPrecision(4))} mm`;
	const count = plies.length === 1 ? "one ply" : `${plies.length} plies`;
	const own = plies[0].ply.thickness;
	const far = Math.abs(1 / scale - 1) > FAR || Math.abs(scale - 1) > FAR ? " That is far from what is laid up: change the stack, the ply or the wall." : "";
	return [{
		code: "stack-scaled",
		message: `The ${name}: ${count} of ${mm(own)} make${plies.length === 1 ? "s" : ""} ${mm(wall / scale)}, its wall is ${mm(wall)}: they are scaled to it.${far}`
	}];
}
// src/main/handlers/flags.ts
/** What a reader must know about a joint's figures beside the figures. */
/** Bondlines for which adhesives' shear properties are usually measured, mm (common practice, no source). */
const USUAL_GAP = {
	min: .05,
	max: .5
};
function jointFlags(resolved) {
	const { input, adhesive, cases } = resolved;
	const flags = missingData(resolved);
	for (const { loadCase, condition, input: loaded } of cases) {
		if (adhesiveStateAt(adhesive, loaded.temperature, loaded.moisture).outsideTable) flags.push({
			code: "outside-table",
			message: `${caseText(loadCase.name, condition?.name ?? null)}: ${minus(loaded.temperature)} °C lies beyond the adhesive's ${loaded.moisture} properties; the nearest row is used, not an extrapolation.`
		});
		if (condition !== null) continue;
		if (loaded.kind === "cyclic" && !adhesive.fatigue) flags.push({
			code: "no-fatigue",
			message: `${loadCase.name}: the adhesive has no S-N line, so cyclic shear is not checked; first yield is, and that is not enough for a long life. Give the adhesive one from coupons.`
		});
		const { force, moment, torque, shear } = loaded.loads;
		if (force === 0 && moment === 0 && torque === 0 && shear === 0) flags.push({
			code: "no-load",
			message: `${loadCase.name}: no load acts on this joint, so it has no margin in that case; only thermal stress is there.`
		});
	}
	const assembly = assemble(input, "nominal");
	if (assembly.bonds.length === 2) flags.push({
		code: "built-in-root",
		message: "Peel at the root, where the outer walls are built into solid metal, is not resolved: finite elements give two to five times as much right at that corner under load. The rows of peel judge it as the model has it."
	});
	flags.push(...stackFlags(assembly));
	for (const part of [assembly.tube, ...assembly.outers]) {
		const ratio = part.root.meanRadius / part.root.thickness;
		if (!assembly.flat && ratio < 5) flags.push({
			code: "thick-wall",
			message: `The ${part.name}'s mean radius is ${ratio.toFixed(1)} times its wall; below 5 the stress varies through the wall, which shear lag does not see.`
		});
	}
	for (const bond of assembly.bonds) if (bond.gap < USUAL_GAP.min || bond.gap > USUAL_GAP.max) flags.push({
		code: "unusual-gap",
		message: `The ${bond.name} is ${bond.gap} mm thick; shear properties are usually measured between ${USUAL_GAP.min} and ${USUAL_GAP.max} mm and change outside.`
	});
	return flags;
}
/** What the project does not say, and what is therefore not checked or left out. */
function missingData({ adhesive, input }) {
	const flags = [];
	const say = (code, message) => {
		flags.push({
			code,
			message
		});
	};
	if (adhesive.states.some(({ peelStrength }) => peelStrength === void 0)) say("no-peel-strength", "The adhesive has no peel strength at every temperature and moisture: peel is not checked where it is missing. A bonded laminate often fails by peel first.");
	if (adhesive.expansion === void 0) say("no-expansion", "The adhesive's own expansion is not given: its shrinkage on cooling is left out of peel.");
	if (!adhesive.fracture) say("no-fracture", "The adhesive has no fracture energies: a crack in the bond is not checked.");
	const { tube, outers } = assemble(input, "nominal");
	for (const { name, material } of [tube, ...outers]) {
		if (material.kind !== "orthotropic") continue;
		const { interlaminarTension, interlaminarShear, throughExpansion, throughModulus } = material;
		if (interlaminarTension === void 0 || interlaminarShear === void 0) say("no-interlaminar", `The ${name} has no strengths between plies: a laminate often parts there, one ply below the bond, and it is not checked.`);
		if (throughExpansion === void 0 || throughModulus === void 0) say("no-through-thickness", `The ${name} lacks modulus or expansion through its thickness: peel takes it as rigid there, or leaves its own shrinkage out.`);
	}
	return flags;
}
/** With the sign that the rest of the page uses. */
const minus = (value) => String(value).replace("-", "−");
// src/main/handlers/check.ts
/** The whole project: every joint with its lowest margin. */
/** @param judged told how many of the joint's states are judged, of how many */
function summarise(project, index, judged) {
	const joint = project.joints[index];
	const common = {
		jointId: joint.id,
		name: joint.name,
		description: describeJoint(joint),
		overlap: joint.overlap
	};
	const { settings } = project;
	const reply = guarded(index, () => {
		const resolved = resolveJoint(project, index);
		const lowest = lowestOfJoint(resolved, settings, judged);
		return ok({
			lowest: lowest ? toMargin(lowest, resolved, settings.targetMargin, "") : null,
			flags: jointFlags(resolved)
		});
	});
	return reply.ok ? {
		...common,
		...reply.value,
		refused: null
	} : {
		...common,
		lowest: null,
		flags: [],
		refused: reply.error
	};
}
/** Progress counts load cases; a joint without one is a step too. */
const stepsOf = ({ loads }) => Math.max(1, loads.length);
const countStates = (joints) => {
	const counts = {
		fails: 0,
		low: 0,
		holds: 0
	};
	for (const { lowest } of joints) if (lowest) counts[lowest.state]++;
	return counts;
};
/**
* @param context with a `share`, only every so manyth joint is judged, and the report holds these
* alone: `mergeChecks` puts the shares together
*/
function check(project, context = unwatched) {
	const { progress, share = {
		part: 0,
		of: 1
	} } = context;
	const total = project.joints.reduce((sum, joint) => sum + stepsOf(joint), 0);
	const joints = [];
	let done = 0;
	for (const [index, joint] of project.joints.entries()) {
		if (index % share.of !== share.part) continue;
		const steps = stepsOf(joint);
		const told = (fraction) => progress(done + steps * fraction, total, joint.name);
		told(0);
		joints.push(summarise(project, index, (states, of) => told(states / of)));
		told(1);
		done += steps;
	}
	return {
		project: project.name,
		targetMargin: project.settings.targetMargin,
		joints,
		counts: countStates(joints),
		modelVersion: "2"
	};
}
// src/shared/joint-fields.ts
/**
* Every input of a joint as one list of labelled fields, named alike whatever lap it has: the sleeve of a
* single lap is the socket (or the spigot) that a double lap has too. For putting joints side by side.
*/
/** The names that a single lap's parts have in a double lap. */
function alias(joint) {
	if (joint.type === "sleeve-single") return joint.side === "socket" ? {
		sleeve: "socket",
		bond: "outerBond"
	} : {
		sleeve: "spigot",
		bond: "innerBond"
	};
	return joint.type === "flat-single" ? {
		plate: "lowerStrap",
		bond: "lowerBond"
	} : {};
}
const partWords = {
	tube: "tube",
	strip: "strip",
	spigot: "spigot",
	socket: "socket",
	lowerStrap: "lower strap",
	upperStrap: "upper strap",
	innerBond: "inner bond",
	outerBond: "outer bond",
	lowerBond: "lower bond",
	upperBond: "upper bond"
};
const fieldWords = {
	overlap: ["overlap", "mm"],
	width: ["width", "mm"],
	offset: ["offset", "mm"],
	adherend: ["material", ""],
	adhesive: ["adhesive", ""],
	outsideDiameter: ["outside diameter", "mm"],
	wall: ["wall", "mm"],
	thickness: ["thickness", "mm"],
	atRoot: ["wall at the root", "mm"],
	atMouth: ["wall at the mouth", "mm"],
	gap: ["gap", "mm"],
	tolerance: ["gap tolerance", "mm"],
	force: ["axial force", "N"],
	moment: ["bending moment", "N·mm"],
	torque: ["torque", "N·mm"],
	shear: ["transverse shear", "N"]
};
/** Parts first, in the order of the joint's own fields; loads last. */
function jointFields(project, joint) {
	const fields = [{
		field: "lap",
		label: "lap",
		unit: "",
		value: lapWords[lapOf(joint)]
	}];
	const nameOf = (key, value) => {
		return (key === "adhesive" ? project.adhesives : project.adherends).find(({ id }) => id === value)?.name ?? value;
	};
	const add = (key, value, path, words) => {
		const known = fieldWords[key];
		if (!known || typeof value !== "number" && typeof value !== "string") return;
		const [label, unit] = known;
		fields.push({
			field: path,
			label: words === "" ? label : `${words}, ${label}`,
			unit,
			value: typeof value === "string" ? nameOf(key, value) : value
		});
	};
	const other = alias(joint);
	for (const [key, value] of Object.entries(joint)) {
		const part = other[key] ?? key;
		if (!(part in partWords)) add(key, value, key, "");
		else for (const [inner, own] of Object.entries(value)) add(inner, own, `${part}.${inner}`, partWords[part]);
	}
	for (const { case: caseId, ...load } of joint.loads) {
		const name = project.loadCases.find(({ id }) => id === caseId)?.name ?? caseId;
		for (const [key, value] of Object.entries(load)) add(key, value, `loads.${caseId}.${key}`, name);
	}
	return fields;
}
/** Fields that differ, in the order in which the joints have them. */
function differences(project, joints) {
	const all = joints.map((joint) => jointFields(project, joint));
	const order = /* @__PURE__ */ new Map();
	for (const fields of all) for (const one of fields) if (!order.has(one.field)) order.set(one.field, one);
	return [...order.values()].flatMap(({ field, label, unit }) => {
		const values = all.map((fields) => fields.find((one) => one.field === field)?.value ?? null);
		return values.every((value) => value === values[0]) ? [] : [{
			field,
			label,
			unit,
			values
		}];
	});
}
// src/model/curves/layered-curves.ts
/** What is drawn of the layered model: shear and peel along each bond at one clocking and load. */
/** @param factor on the loads of the case */
function countedPeel(state, theta, factor) {
	const { layered, assembly, bonds, loadCase } = state;
	const { force, moment } = loadCase.loads;
	const load = factor * force;
	const solution = layered.solution(load);
	const turned = assembly.flat ? 0 : factor * moment * Math.cos(theta);
	const elasticAt = (x) => withMoment(partOf(solution, layered.order, x, load, 1), turned === 0 ? null : layered.bent(x), turned);
	const dense = fieldStations(assembly.overlap);
	const elastic = elasticAt(dense);
	const place = peakOf(elastic, dense);
	const yields = elastic.bonds.some(({ shear }, j) => shear.some((value) => Math.abs(value) > bonds[j].shearYield));
	const together = factor * pullAt(state, theta, boundedCover(state, "peel", place.bond, place.x));
	const flowing = yields ? layered.capped(together) : null;
	return {
		dense,
		elastic,
		capped: flowing && {
			solution: flowing.solution,
			load: together
		},
		place,
		elasticAt
	};
}
/** @param x stations of the curves */
function layeredCurves(state, theta, factor, x) {
	const { layered, bonds, adhesives } = state;
	const { dense, elastic, capped, elasticAt } = countedPeel(state, theta, factor);
	const drawn = elasticAt(x);
	const cappedAt = (at) => capped && partOf(capped.solution, layered.order, at, capped.load, 1);
	const drawnCapped = cappedAt(x);
	const counted = cappedAt(dense) ?? elastic;
	return bonds.map((_bond, j) => {
		const peels = counted.bonds[j].peel;
		let at = 0;
		peels.forEach((value, i) => {
			if (value > peels[at]) at = i;
		});
		return {
			shear: [...drawn.bonds[j].shear],
			peel: [...drawn.bonds[j].peel],
			capped: drawnCapped && {
				shear: [...drawnCapped.bonds[j].shear],
				peel: [...drawnCapped.bonds[j].peel]
			},
			peak: {
				x: dense[at],
				value: peels[at]
			},
			strength: adhesives[j].peelStrength ?? null
		};
	});
}
function withMoment(part, bent, turned) {
	if (!bent) return part;
	const add = (a, b) => a.map((value, i) => value + turned * b[i]);
	return {
		...part,
		bonds: part.bonds.map(({ shear, peel }, j) => ({
			shear: add(shear, bent.bonds[j].shear),
			peel: add(peel, bent.bonds[j].peel)
		}))
	};
}
function peakOf(part, x) {
	let place = {
		bond: 0,
		x: 0,
		peel: Number.NEGATIVE_INFINITY
	};
	part.bonds.forEach(({ peel }, bond) => {
		peel.forEach((value, i) => {
			if (value > place.peel) place = {
				bond,
				x: x[i],
				peel: value
			};
		});
	});
	return place;
}
// src/model/curves/stress-curves.ts
/** What is drawn of one state: shear along each bond, forces in the walls, zones and trough. */
/** Stations: evenly spaced, with more towards the ends, where the shear turns. */
function stationsOf(length, count) {
	const stations = [];
	for (let i = 0; i < count; i++) {
		const t = i / (count - 1);
		stations.push(length * (.35 * t + .65 * ((1 - Math.cos(Math.PI * t)) / 2)));
	}
	stations[count - 1] = length;
	return stations;
}
function stressCurves(state, theta, loadFactor, adherendShear, count) {
	const { assembly, bonds, deltaT, loadCase } = state;
	const problem = state.at(theta);
	const { axial, hoop, length } = problem;
	const atYield = shearFactor(problem, bonds.map((bond) => bond.shearYield));
	const strength = bondStrength(problem, atYield);
	const capacity = strength ? strength.factor : Number.POSITIVE_INFINITY;
	const carried = loadFactor <= capacity * (1 + 1e-9);
	const below = strength?.wholeBondFlows ? 1 - 1e-6 : 1;
	const factor = Math.min(loadFactor, capacity * below);
	const lap = stateToDraw(problem, factor, atYield.factor, carried ? null : strength);
	const x = stationsOf(length, count);
	const zeros = () => x.map(() => 0);
	const curves = bonds.map((bond, j) => {
		const geometry = assembly.bonds[j];
		const axialShear = axial < 0 ? zeros() : x.map((s) => lap.shear(axial, j, s));
		const hoopShear = hoop < 0 ? zeros() : x.map((s) => lap.shear(hoop, j, s));
		const shear = x.map((_s, i) => hoop < 0 ? axialShear[i] : Math.hypot(axialShear[i], hoopShear[i]));
		let peak = 0;
		shear.forEach((value, i) => {
			if (Math.abs(value) > Math.abs(shear[peak]) * (1 + 1e-9)) peak = i;
		});
		const flex = adherendShear ? adherendFlexibility(assembly, j) : 0;
		const strainAt = (s) => {
			return adhesiveStrain(Math.hypot(...problem.channels.map((_c, q) => lap.slip(q, j, s))), resultant(problem, lap, j, s), geometry.gap, flex);
		};
		return {
			part: geometry.name,
			gap: geometry.gap,
			radius: geometry.radius,
			axialShear,
			hoopShear,
			shear,
			shearYield: bond.shearYield,
			peak: {
				x: x[peak],
				value: shear[peak]
			},
			plastic: lap.plastic(j),
			strain: Math.max(strainAt(0), strainAt(length)),
			strainAllowed: bond.shearYield / state.adhesives[j].shearModulus + state.adhesives[j].plasticStrain,
			force: axial < 0 ? 0 : lap.outerForce(axial, j, 0)
		};
	});
	const load = axial < 0 ? 0 : problem.channels[axial].load * factor;
	const outer = (j) => axial < 0 ? zeros() : x.map((s) => lap.outerForce(axial, j, s));
	const outers = bonds.map((_bond, j) => outer(j));
	const tubeForce = x.map((_s, i) => outers.reduce((left, force) => left - force[i], load));
	const stresses = wallStresses(assembly, bonds, loadCase.loads, deltaT);
	return {
		carried,
		capacity,
		x,
		bonds: curves,
		walls: stresses.parts.map((part, i) => {
			const stressAt = (s) => {
				const { axial: mechanical, thermal } = stresses.at(i, s)(theta);
				return factor * mechanical + thermal;
			};
			return {
				part: part.name,
				force: i === 0 ? tubeForce : outers[i - 1],
				stressAtRoot: stressAt(0),
				stressAtMouth: stressAt(length)
			};
		}),
		trough: troughOf$1(problem, lap, curves, length)
	};
}
/** The state under a factor; the failed one where the bond does not carry more. */
function stateToDraw(problem, factor, yieldFactor, failed) {
	if (failed?.failed) return failed.failed;
	if (isDrawnElastic(factor, yieldFactor) && !hasExactPlastic(problem)) return elasticState(problem, factor);
	return plasticState(problem, factor);
}
/** Yielded by temperature alone, no factor is small enough to be elastic, not even none. */
const isDrawnElastic = (factor, yieldFactor) => yieldFactor > 0 && factor <= yieldFactor;
/** The worse bond's trough: lowest shear, elastic length, and length at rest below a tenth of yield. */
function troughOf$1(problem, lap, curves, length) {
	const count = 400;
	return curves.map((curve, j) => {
		const limit = TROUGH_RATIO * curve.shearYield;
		let resting = 0;
		for (let i = 0; i < count; i++) if (resultant(problem, lap, j, length * (i + .5) / count) <= limit) resting++;
		const plastic = curve.plastic.reduce((sum, { from, to }) => sum + to - from, 0);
		return {
			ratio: lowestRatio(problem, lap, j),
			elasticLength: length - plastic,
			restLength: length * resting / count
		};
	}).reduce((worse, trough) => trough.ratio > worse.ratio ? trough : worse);
}
// src/model/sweep/overlap-sweep.ts
/**
* Strength of the joint against its overlap, and the plateau: the shortest overlap whose bond is
* within 2 % of a very long one.
*/
const bondOnly = /* @__PURE__ */ new Set(["adhesive-strain"]);
/** All but the durability trough, which is a rule of length. */
const service$1 = /* @__PURE__ */ new Set([
	"adhesive-yield",
	"adhesive-strain",
	"cyclic-shear",
	...PEEL_MODES,
	...WALL_MODES
]);
const ratioOf = ({ reached, asked }) => reached / asked;
const lowest = (modes) => modes.reduce((low, { mode, caseIndex }) => ratioOf(mode) < low.ratio ? {
	ratio: ratioOf(mode),
	mode,
	caseIndex
} : low, {
	ratio: Number.POSITIVE_INFINITY,
	mode: null,
	caseIndex: -1
});
/** The lowest, the bond's strength at its own worst clocking. */
function lowestBond(modes) {
	const low = lowest(modes);
	const found = modes.find(({ mode }) => mode === low.mode);
	if (!found) return low;
	const mode = refineStrength(found.state, found.mode);
	return {
		...low,
		ratio: ratioOf(mode),
		mode
	};
}
/** The joint with another overlap, all else as it is. */
const withOverlap = (joint, overlap) => ({
	...joint,
	overlap
});
function modesAt(question, overlap, only) {
	const sized = {
		...question,
		joint: withOverlap(question.joint, overlap)
	};
	let low = Number.POSITIVE_INFINITY;
	const ofInterest = (_mode, known) => Math.min(low, known);
	const found = [];
	for (const { caseIndex, state, modes } of overStates(sized, {
		only,
		ofInterest
	})) for (const mode of modes) {
		low = Math.min(low, mode.margin);
		found.push({
			mode,
			caseIndex,
			state
		});
	}
	return found;
}
/** Bond strength over the load asked for: adhesive ultimate strain, worst over cases and gaps. */
const bondStrengthAt = (question, overlap) => lowestBond(modesAt(question, overlap, bondOnly));
/**
* Bond strength, and the lowest of all modes asked for.
* @param only must hold `adhesive-strain`; all but the durability trough when left out
*/
function strengthAt$1(question, overlap, only = service$1) {
	const modes = modesAt(question, overlap, only);
	const bond = lowestBond(modes.filter(({ mode }) => mode.mode === "adhesive-strain"));
	const all = lowest(modes);
	return {
		bond: bond.ratio,
		all: bond.ratio < all.ratio ? bond : all
	};
}
const PLATEAU_SHARE = .98;
/**
* @param looked called after each overlap that was looked at
* @throws ModelError when the joint cannot be assembled
*/
function findPlateau(question, looked) {
	assemble(question.joint, "nominal");
	const strengthOf = (overlap) => {
		const found = bondStrengthAt(question, overlap);
		looked?.();
		return found;
	};
	const strength = strengthOf(500);
	if (!Number.isFinite(strength.ratio) || strength.ratio <= 0) return {
		overlap: null,
		strength
	};
	const level = PLATEAU_SHARE * strength.ratio;
	const excess = (overlap) => strengthOf(overlap).ratio - level;
	if (excess(490) <= 0) return {
		overlap: null,
		strength
	};
	if (excess(1) >= 0) return {
		overlap: 1,
		strength
	};
	let low = 1;
	let high = 500;
	for (let guess = 2; guess < 500; guess *= 2) {
		if (excess(guess) >= 0) {
			high = guess;
			break;
		}
		low = guess;
	}
	return {
		overlap: findRoot(excess, low, high, .01),
		strength
	};
}
// src/main/handlers/focus.ts
const conditionIdOf = ({ condition }) => condition?.id ?? null;
/** True where the case and the surroundings are those asked for; what was left out fits any. */
const isWanted = ({ loadCase, condition }, { caseId, conditionId }) => (caseId === void 0 || loadCase.id === caseId) && (conditionId === void 0 || conditionIdOf({ condition }) === conditionId);
const list$1 = (ids) => [...new Set(ids)].join(", ") || "none";
/**
* The cases that a focus leaves. A condition like surroundings that the case is judged in already is those.
* @returns a refusal that names what there is, when nothing is left
*/
function casesInFocus(project, { cases, joint, index }, wanted) {
	const field = `joints.${index}.loads`;
	const { caseId, conditionId } = wanted;
	const ofCase = cases.filter(({ loadCase }) => caseId === void 0 || loadCase.id === caseId);
	if (ofCase.length === 0) {
		const known = list$1(cases.map(({ loadCase }) => loadCase.id));
		return refuse("not-found", field, `The joint "${joint.name}" carries no load case "${caseId}". It has: ${known}.`);
	}
	const there = ofCase.filter((one) => isWanted(one, wanted));
	if (there.length > 0) return ok(there);
	const condition = project.conditions?.find(({ id }) => id === conditionId);
	const alike = ofCase.filter(({ input }) => input.temperature === condition?.temperature && input.moisture === condition.moisture);
	if (alike.length > 0) return ok(alike);
	const judged = list$1(ofCase.flatMap(({ condition: one }) => one ? [one.id] : []));
	return refuse("not-found", condition ? field : "conditions", condition ? `The joint "${joint.name}" is not judged in the condition "${conditionId}" there: it is so only in load cases with "everyCondition". It is judged in: ${judged}.` : `There is no condition "${conditionId}" in this project. It has: ${list$1((project.conditions ?? []).map(({ id }) => id))}.`);
}
// src/model/curves/stress-map.ts
/** Elastic shear and peel of the bonds over the overlap and all round, by the layered model. */
function stressMap(state, factor, clockings) {
	const { assembly } = state;
	const fields = bondFields(state);
	const theta = assembly.flat ? [0] : Array.from({ length: clockings }, (_v, k) => 2 * Math.PI * k / clockings);
	const x = state.layered.fields(0).x;
	const bonds = assembly.bonds.map(({ name }) => ({
		part: name,
		shear: theta.map(() => []),
		peel: theta.map(() => [])
	}));
	theta.forEach((angle, k) => {
		fields.visit(angle, factor, (at) => {
			const along = at.shearHeld + factor * at.shearLoad;
			bonds[at.bond].shear[k].push(Math.hypot(along, factor * at.around));
			bonds[at.bond].peel[k].push(at.peelHeld + factor * at.peelLoad);
		});
	});
	return {
		x,
		theta,
		bonds
	};
}
// src/main/handlers/stress-extras.ts
/** What a stress report carries beside the curves: ledgers, edge moments, the map around the bond. */
const ledgersOf = ({ assembly, ledgers }, fitting) => ledgers.map((ledger, j) => {
	const { name, gap } = assembly.bonds[j];
	return {
		part: name,
		gap,
		rows: [
			{
				name: "environment",
				factor: ledger.environment
			},
			{
				name: "gap",
				factor: ledger.gap
			},
			{
				name: "ageing",
				factor: ledger.ageing
			},
			{
				name: "scatter",
				factor: ledger.scatter
			},
			{
				name: "fitting",
				factor: 1 / fitting
			}
		],
		strength: ledger.left,
		left: ledger.left / fitting
	};
});
function edgeMomentOf({ assembly, loadCase }, settings, loadFactor) {
	if (!isFlatSingle(assembly)) return null;
	const both = flatEdgeMoments(assembly, loadCase.loads.force * loadFactor);
	const ends = ({ root, mouth }) => ({
		root: root.factor,
		mouth: mouth.factor
	});
	return {
		chosen: settings.edgeMoment ?? "goland-reissner",
		golandReissner: ends(both.golandReissner),
		hartSmith: ends(both.hartSmith)
	};
}
function mapOf(state, loadFactor, clockings) {
	const { x, theta, bonds } = stressMap(state, loadFactor, clockings);
	return {
		x,
		theta: theta.map(degrees),
		bonds
	};
}
/** As a list of gap states is read: from thin to thick, then the sides. */
const IN_ORDER = [
	"min",
	"nominal",
	"max",
	"thin-side",
	"thick-side"
];
const isCaseOf = (one, { loadCase, condition }) => one.loadCase === loadCase && one.condition === condition;
const nameOf = (one) => one ? caseText(one.loadCase.name, one.condition?.name ?? null) : "";
/**
* The governing row that decides what is drawn when nothing is asked for.
* @param there the cases in the focus
*/
function drawn(rows, { gapState }, there) {
	const fitting = rows.filter((row) => there.some((one) => isCaseOf(one, row)) && (gapState === void 0 || row.result.gapState === gapState));
	return fitting.find(({ result }) => !WALL_MODES.has(result.mode) && result.mode !== "durability-trough") ?? fitting[0];
}
function stressOf(project, resolved, focus, rows) {
	const { cases, input, adhesive, joint } = resolved;
	if (cases.length === 0 && focus.caseId === void 0) return ok(null);
	const there = casesInFocus(project, resolved, focus);
	if (!there.ok) return there;
	const row = drawn(rows, focus, there.value);
	const found = there.value.find((one) => row && isCaseOf(one, row)) ?? there.value[0];
	const states = gapStates(input);
	const wanted = focus.gapState ?? row?.result.gapState ?? "nominal";
	const gapState = states.includes(wanted) ? wanted : "nominal";
	const theta = focus.theta === void 0 ? row?.result.theta ?? 0 : radians(focus.theta);
	const loadFactor = focus.loadFactor ?? 1;
	const { settings } = project;
	const state = jointState(input, adhesive, found.input, gapState, settings);
	const curves = stressCurves(state, theta, loadFactor, settings.adherendShear, focus.stations ?? 161);
	const layered = layeredCurves(state, theta, loadFactor, curves.x);
	const flags = [];
	if (!curves.carried) flags.push({
		code: "not-carried",
		message: curves.capacity <= 0 ? "Temperature alone takes the bond to its ultimate strain: the curve shows it without load." : `The bond carries ${curves.capacity.toFixed(3)} times this load, not ${loadFactor}: the curve shows the most it carries.`
	});
	return ok({
		jointId: joint.id,
		caseId: found.loadCase.id,
		conditionId: found.condition?.id ?? null,
		conditionName: found.condition?.name ?? null,
		gapState,
		gapStates: IN_ORDER.filter((one) => states.includes(one)),
		temperature: found.input.temperature,
		moisture: found.input.moisture,
		theta: degrees(theta),
		loadFactor,
		carried: curves.carried,
		capacity: Number.isFinite(curves.capacity) ? curves.capacity : 0,
		x: curves.x,
		bonds: curves.bonds.map((bond, j) => ({
			...bond,
			layered: layered[j]
		})),
		adherends: curves.walls,
		trough: curves.trough,
		ledgers: ledgersOf(state, settings.factors.fitting),
		edgeMoment: edgeMomentOf(state, settings, loadFactor),
		map: focus.map === void 0 ? null : mapOf(state, loadFactor, focus.map),
		flags
	});
}
/** One line for the trough's margin: how much of the bond stays elastic and at rest at the asked load. */
function troughRemark(row, adherendShear) {
	const { state, result } = row;
	const { trough, carried } = stressCurves(state, result.theta, result.asked, adherendShear, 2);
	if (!carried) return "the bond fails before this load";
	const rest = `${trough.restLength.toFixed(1)} mm below a tenth of yield`;
	return `elastic over ${trough.elasticLength.toFixed(1)} mm, ${rest}`;
}
function analyse(project, resolved, focus) {
	const { settings } = project;
	const rows = governingModes(resolved, settings);
	const stress = stressOf(project, resolved, focus, rows);
	if (!stress.ok) return stress;
	return ok({
		jointId: resolved.joint.id,
		description: describeJoint(resolved.joint),
		targetMargin: settings.targetMargin,
		margins: rows.map((row) => toMargin(row, resolved, settings.targetMargin, row.result.mode === "durability-trough" ? troughRemark(row, settings.adherendShear) : "")),
		stress: stress.value,
		flags: jointFlags(resolved),
		modelVersion: "2"
	});
}
/** Even steps; with a plateau inside, two thirds of them up to a little past it, where the curve bends. */
function spread(from, to, count, plateau) {
	const bend = plateau === null ? to : plateau * 1.25;
	const even = (a, b, steps) => Array.from({ length: steps }, (_v, i) => a + (b - a) * i / steps);
	if (bend <= from || bend >= to || count < 6) return [...even(from, to, count - 1), to];
	const dense = Math.round((count - 1) * (2 / 3));
	return [
		...even(from, bend, dense),
		...even(bend, to, count - 1 - dense),
		to
	];
}
/** Overlaps that the search for the plateau looks at, about: for the progress alone. */
const PLATEAU_STEPS = 16;
function sweep(project, resolved, range, { progress } = unwatched) {
	const { input: joint, adhesive } = resolved;
	const question = {
		joint,
		adhesive,
		cases: resolved.cases.map(({ input }) => input),
		settings: project.settings
	};
	if (question.cases.length === 0) return refuse("bad-input", `joints.${resolved.index}.loads`, `The joint "${resolved.joint.name}" has no load case: give it one to sweep its overlap.`);
	const count = range.points ?? 33;
	const total = PLATEAU_STEPS + count;
	let looked = 0;
	progress(0, total, "plateau");
	const plateau = findPlateau(question, () => {
		looked = Math.min(looked + 1, PLATEAU_STEPS);
		progress(looked, total, "plateau");
	});
	const reach = Math.max(plateau.overlap ?? 0, joint.overlap);
	const from = range.from ?? 2;
	const to = range.to ?? Math.min(500, Math.ceil(reach * 1.6 / 10) * 10);
	if (to <= from) return refuse("bad-request", "", "A sweep must end beyond where it starts.");
	const points = [];
	for (const [i, overlap] of spread(from, to, count, plateau.overlap).entries()) {
		progress(PLATEAU_STEPS + i, total, `overlap ${overlap.toFixed(1)} mm`);
		const { bond, all } = strengthAt$1(question, overlap);
		if (!Number.isFinite(bond) || !Number.isFinite(all.ratio)) continue;
		const mode = all.mode ? modeLabel(all.mode.mode, all.mode.part) : "";
		points.push({
			overlap,
			bond,
			all: all.ratio,
			mode
		});
	}
	return ok({
		jointId: resolved.joint.id,
		points,
		plateau: plateau.overlap,
		plateauStrength: Number.isFinite(plateau.strength.ratio) ? plateau.strength.ratio : 0,
		caseName: nameOf(resolved.cases[plateau.strength.caseIndex]),
		flags: []
	});
}
// src/model/mass/joint-mass.ts
/** g per mm³ of 1 kg/m³. */
const GRAMS = 1e-6;
const wallVolume = ({ root, middle, mouth }, overlap) => overlap * (root.area + 4 * middle.area + mouth.area) / 6;
const massOf$1 = (part, volume, density) => ({
	part,
	volume,
	mass: density === void 0 ? null : volume * density * GRAMS
});
function jointMass(assembly, densities) {
	const { overlap, tube, outers, bonds } = assembly;
	const walls = outers.map((part, i) => massOf$1(part.name, wallVolume(part, overlap), densities.outers[i]));
	const adhesive = bonds.map(({ name, width, gap }) => massOf$1(name, width * gap * overlap, densities.adhesive));
	const masses = [...walls, ...adhesive].map(({ mass }) => mass);
	return {
		tube: massOf$1(tube.name, wallVolume(tube, overlap), densities.tube),
		walls,
		bonds: adhesive,
		added: masses.some((mass) => mass === null) ? null : masses.reduce((sum, mass) => sum + mass, 0)
	};
}
const MOST_LAYERS = 2500;
/** Layers of a sleeve printed along its axis, rounded up. Sizes in mm. */
function printOf(overlap, layerThickness, base) {
	const height = overlap + base;
	const layers = Math.ceil(height / layerThickness - 1e-9);
	return {
		height,
		layers,
		tall: layers > 2500 || height > 150
	};
}
// src/main/handlers/mass.ts
/** What a joint weighs and how many layers it takes to print. */
/** kg/m³; that of a laminate is its ply's. */
function densityOf(project, adherendId) {
	const adherend = project.adherends.find(({ id }) => id === adherendId);
	if (adherend.kind !== "laminate") return adherend.density;
	return project.plies.find(({ id }) => id === adherend.ply).density;
}
/** Materials of a joint that have no density, by name. */
function unknown$1(project, joint) {
	const ids = new Set(adherendReferences(joint).map(([, id]) => id));
	const parts = project.adherends.filter(({ id }) => ids.has(id) && densityOf(project, id) === void 0);
	const adhesive = project.adhesives.find(({ id }) => id === joint.adhesive);
	return [...parts, ...adhesive.density === void 0 ? [adhesive] : []].map(({ name }) => name);
}
function massOf(project, { joint, input }) {
	const [tube, ...outers] = adherendReferences(joint).map(([, id]) => densityOf(project, id));
	const adhesive = project.adhesives.find(({ id }) => id === joint.adhesive).density;
	const mass = jointMass(assemble(input, "nominal"), {
		tube,
		outers,
		adhesive
	});
	return {
		...mass,
		adhesiveVolume: mass.bonds.reduce((sum, { volume }) => sum + volume, 0),
		without: unknown$1(project, joint)
	};
}
function printingOf({ settings }, { joint }) {
	const { layerThickness, base } = settings.printing ?? {
		layerThickness: .06,
		base: 0
	};
	const { height, layers, tall } = printOf(joint.overlap, layerThickness, base);
	const flag = {
		code: "tall-print",
		message: `The sleeve is ${Number(height.toPrecision(4))} mm tall and takes ${layers} layers; a print is usually not above ${MOST_LAYERS} layers or 150 mm (common practice, no source).`
	};
	return {
		print: {
			layerThickness,
			height,
			layers
		},
		flags: tall ? [flag] : []
	};
}
// src/model/stiffness/channels.ts
/** Springs that a joint has: a flat one bends in its own plane and has no torsion. */
const kindsOf = ({ flat }) => flat ? ["axial", "bending"] : [
	"axial",
	"bending",
	"torsion"
];
function memberOf(part, stiffnessOf) {
	const properties = axialProperties(part.material);
	const at = (section) => stiffnessOf(properties, section);
	const stiffness = at(part.root);
	if (part.root.thickness === part.mouth.thickness) return {
		stiffness,
		thermalStrain: 0
	};
	return {
		stiffness,
		thermalStrain: 0,
		taper: {
			middle: at(part.middle),
			mouth: at(part.mouth)
		}
	};
}
/** The channel of one spring under a unit load: 1 N or 1 N·mm. */
function springChannel(assembly, kind) {
	const stiffnessOf = stiffnessFor(assembly, kind);
	return {
		load: 1,
		tube: memberOf(assembly.tube, stiffnessOf),
		outers: assembly.outers.map((part) => memberOf(part, stiffnessOf)),
		levers: assembly.bonds.map(({ radius, width }) => {
			if (kind === "axial") return 1;
			if (kind === "torsion") return radius;
			return assembly.flat ? width / Math.sqrt(12) : radius / Math.SQRT2;
		})
	};
}
function stiffnessFor({ flat, bonds }, kind) {
	switch (kind) {
		case "axial": return ({ modulus }, { area }) => modulus * area;
		case "bending": {
			const width = bonds[0].width;
			return flat ? ({ modulus }, { area }) => modulus * area * width * width / 12 : ({ modulus }, { secondMoment }) => modulus * secondMoment;
		}
		case "torsion": return ({ shearModulus }, { polarMoment }) => shearModulus * polarMoment;
	}
}
// src/model/stiffness/compliance.ts
/** @param channel of any generalised force; its load must not be zero. Movement per load. */
function complianceOf(channel, bonds, length) {
	const { mechanical } = solveElastic(channel, bonds, length);
	const weight = (j) => channel.levers[j] ** 2 * bonds[j].width * bonds[j].stiffness;
	const j = bonds.length === 2 && weight(1) > weight(0) ? 1 : 0;
	return (mechanical.shear(j, length) / bonds[j].stiffness / channel.levers[j] + mechanical.outerStretch(j)) / channel.load;
}
// src/model/stiffness/springs.ts
/**
* The joint as springs for a frame model: elastic, small movements, at the nominal gap. Each is the
* load at the mouth over the movement of the tube there against the metal at the root.
*/
/** Below this share of the joint's own give, what is left for a spring at the root is rounding. */
const NOTHING = 1e-9;
function springsOf(assembly, bonds) {
	const { overlap } = assembly;
	return {
		springs: kindsOf(assembly).map((kind) => {
			const channel = springChannel(assembly, kind);
			const compliance = complianceOf(channel, bonds, overlap);
			const tube = channel.tube.stiffness;
			const left = compliance - overlap / tube;
			return {
				kind,
				stiffness: 1 / compliance,
				tube,
				atRoot: left > NOTHING * compliance ? 1 / left : null,
				tubeLength: compliance * tube
			};
		}),
		shear: shearStiffness(assembly)
	};
}
/** ∫ dx / Σ κGA by Simpson's rule over root, middle and mouth, inverted. */
function shearStiffness({ flat, overlap, tube, outers }) {
	const share = flat ? 5 / 6 : 1 / 2;
	const at = (place) => [tube, ...outers].reduce((sum, part) => sum + axialProperties(part.material).shearModulus * part[place].area, 0) * share;
	return 6 / (overlap * (1 / at("root") + 4 / at("middle") + 1 / at("mouth")));
}
/**
* Springs at the nominal gap in one state of the adhesive. Knockdowns take from strength, not from stiffness.
* @throws ModelError naming the input that does not fit
*/
function jointSprings(joint, adhesive, at, adherendShear) {
	const assembly = assemble(joint, "nominal");
	const state = adhesiveStateAt(adhesive, at.temperature, at.moisture);
	return {
		...springsOf(assembly, bondLaws(assembly, assembly.bonds.map(() => state), adherendShear)),
		outsideTable: state.outsideTable
	};
}
// src/main/handlers/springs.ts
/** The joint as springs for the user's frame model, at every temperature and moisture of its cases. */
/** Every temperature and moisture that the joint meets, once, with what is at it. */
function environments({ loadCases, conditions = [] }, { joint, adhesive }, caseId) {
	const found = [];
	const add = (name, temperature, moisture) => {
		const same = found.find((one) => one.temperature === temperature && one.moisture === moisture);
		const names = name === null ? [] : [name];
		if (!same) found.push({
			temperature,
			moisture,
			names
		});
		else if (name !== null && !same.names.includes(name)) same.names.push(name);
	};
	const cases = joint.loads.filter((load) => caseId === void 0 || load.case === caseId).map((load) => loadCases.find(({ id }) => id === load.case));
	for (const { name, temperature, moisture } of cases) add(name, temperature, moisture);
	if (cases.some(({ everyCondition }) => everyCondition)) for (const { name, temperature, moisture } of conditions) add(name, temperature, moisture);
	if (cases.length === 0) for (const { temperature, moisture } of adhesive.states) add(null, temperature, moisture);
	return found.sort((a, b) => a.moisture.localeCompare(b.moisture) || a.temperature - b.temperature);
}
/**
* The springs at one temperature and moisture.
* @throws ModelError when the adhesive has no such properties or the joint cannot be assembled
*/
const springsAt = ({ settings }, { input, adhesive }, at) => jointSprings(input, adhesive, at, settings.adherendShear);
function springs(project, resolved, caseId) {
	const { joint, index, typical } = resolved;
	if (caseId !== void 0 && !joint.loads.some((load) => load.case === caseId)) return refuse("not-found", `joints.${index}.loads`, `The joint "${joint.name}" carries no load case "${caseId}". It has: ${joint.loads.map((load) => load.case).join(", ") || "none"}.`);
	const flags = [];
	const states = environments(project, resolved, caseId).map((at) => {
		const { springs: found, shear, outsideTable } = springsAt(project, resolved, at);
		if (outsideTable) flags.push({
			code: "outside-table",
			message: `${environment(at.temperature, at.moisture)} lies beyond the adhesive's ${at.moisture} properties; the nearest row is used, not an extrapolation.`
		});
		return {
			...at,
			springs: found,
			shear
		};
	});
	if (joint.type === "flat-single") flags.push({
		code: "lap-turns",
		message: "A flat single lap also turns under its load and gives by that as well: it is left out of its pull."
	});
	const { print, flags: tall } = printingOf(project, resolved);
	return ok({
		jointId: joint.id,
		name: joint.name,
		description: describeJoint(joint),
		flat: joint.type === "flat-single" || joint.type === "flat-double",
		overlap: joint.overlap,
		states,
		mass: massOf(project, resolved),
		print,
		typical: typical.size > 0,
		flags: [...flags, ...tall]
	});
}
// src/shared/lap-variant.ts
/** A joint with the other lap, and its sleeve walls by a factor: what a comparison varies. */
/** How many bonds share the load. */
const pliesOf = (joint) => joint.type === "sleeve-double" || joint.type === "flat-double" ? "double" : "single";
/** The lap that a joint takes when it becomes single or double: a sleeve keeps its socket. */
function lapFor(joint, plies) {
	if (pliesOf(joint) === plies) return lapOf(joint);
	if (isFlat(joint)) return plies === "double" ? "flat-double" : "flat-single";
	return plies === "double" ? "sleeve-double" : "socket";
}
/** What the conversion put in or took away, in words. */
function conversionWords(joint) {
	switch (joint.type) {
		case "sleeve-single": return joint.side === "socket" ? "a spigot inside the tube, a copy of the socket’s wall and gap" : "a socket outside the tube, a copy of the spigot’s wall and gap";
		case "sleeve-double": return "no spigot: the tube in its socket alone";
		case "flat-single": return "a second strap, a copy of the plate’s thickness and gap";
		case "flat-double": return "no upper strap: the strip on the lower one alone";
	}
}
const withLap = (joint, plies) => convertLap(joint, lapFor(joint, plies));
/** Longest id and name that the project file takes. */
const ID = 64;
const NAME = 120;
/** A joint under another id and name, without the sizes, which are those of the joint of the frame. */
function named(joint, id, name) {
	const { sizes: _sizes, ...kept } = joint;
	return {
		...kept,
		id: id.slice(0, ID),
		name: name.slice(0, NAME)
	};
}
const wallKeys = {
	"sleeve-single": ["sleeve"],
	"sleeve-double": ["spigot", "socket"],
	"flat-single": ["plate"],
	"flat-double": ["lowerStrap", "upperStrap"]
};
/** Sleeve walls, plate or straps, under the names that the joint has for them. */
const sleeveWalls = (joint) => wallKeys[joint.type].map((key) => [key, joint[key]]);
/** Thickness is kept to a tenth of a micrometre: nobody makes it closer. */
const fine = (value) => Math.round(value * 1e4) / 1e4;
/** The same joint with every sleeve wall a factor thicker; tapers keep their shape. */
function scaleWalls(joint, factor) {
	const walls = sleeveWalls(joint).map(([key, wall]) => [key, {
		...wall,
		atRoot: fine(wall.atRoot * factor),
		atMouth: fine(wall.atMouth * factor)
	}]);
	return {
		...joint,
		...Object.fromEntries(walls)
	};
}
/** The wall that the project file would refuse, if any. */
function wallOutOfRange(joint) {
	const { min, max } = quantities.wall;
	for (const [key, wall] of sleeveWalls(joint)) for (const end of ["atRoot", "atMouth"]) {
		const value = wall[end];
		if (value < min || value > max) return {
			key: `${key}.${end}`,
			value
		};
	}
	return null;
}
// src/main/handlers/variant.ts
/**
* A joint with the other lap, made equal to it in overlap, in added mass or in its lowest margin.
*
* Equal mass keeps the overlap and scales the sleeve walls, which is what a designer would change. Equal
* margin keeps the walls and finds the overlap: the shortest, in steps, that reaches the margin.
*/
/** A joint that need not stand in the project, resolved as if it did. */
const resolveAlone = (project, joint) => resolveJoint({
	...project,
	joints: [joint]
}, 0);
/** What overlap, wall and gap are rounded to where the project does not say. */
const OVERLAP_STEP = 1;
function variant(project, resolved, { lap, equal }, seen = unwatched) {
	const { joint, index } = resolved;
	if (pliesOf(joint) === lap) return refuse("bad-input", `joints.${index}.type`, `The joint "${joint.name}" is a ${lap} lap already: compare it with the other one.`);
	const plain = named(withLap(joint, lap), `${joint.id.slice(0, 44)}-${lap}-${equal}`, `${joint.name}, ${lap} lap at equal ${equal}`);
	const changed = [conversionWords(joint)];
	try {
		massOf(project, resolveAlone(project, plain));
	} catch (error) {
		if (!(error instanceof ModelError)) throw error;
		return refuse("bad-input", `joints.${index}.type`, error.message);
	}
	switch (equal) {
		case "overlap": return ok({
			of: joint.id,
			joint: plain,
			changed,
			equal: null
		});
		case "mass": return atEqualMass(project, resolved, plain, changed);
		case "margin": return atEqualMargin(project, resolved, plain, changed, seen);
	}
}
const thicknessWords = (joint) => sleeveWalls(joint).map(([key, { atRoot, atMouth }]) => {
	return `${key.replace("Strap", " strap")} ${atRoot === atMouth ? `${atRoot}` : `${atRoot} to ${atMouth}`} mm`;
}).join(", ");
function atEqualMass(project, resolved, plain, changed) {
	const { joint, index } = resolved;
	const own = massOf(project, resolved);
	const other = massOf(project, resolveAlone(project, plain));
	if (own.added === null || other.added === null) {
		const names = [.../* @__PURE__ */ new Set([...own.without, ...other.without])].join("\", \"");
		return refuse("bad-input", "adherends", `The mass is not known: give a density to "${names}", or compare at equal overlap.`);
	}
	const target = own.added;
	const adhesive = other.bonds.reduce((sum, { mass }) => sum + (mass ?? 0), 0);
	const tooMuch = (what) => refuse("bad-input", `joints.${index}`, `A ${pliesOf(plain)} lap of ${figure(target)} g at this overlap is not to be had: ${what}.`);
	if (adhesive >= target) return tooMuch(`its adhesive alone weighs ${figure(adhesive)} g`);
	const weighed = (factor) => massOf(project, resolveAlone(project, scaleWalls(plain, factor))).added - target;
	let heavy = 1;
	try {
		while (weighed(heavy) < 0) heavy *= 1.5;
	} catch (error) {
		if (error instanceof ModelError) return tooMuch(error.message);
		throw error;
	}
	const factor = findRoot(weighed, 0, heavy, 1e-7);
	const made = scaleWalls(plain, factor);
	const wrong = wallOutOfRange(made);
	if (wrong) {
		const { min, max } = quantities.wall;
		return tooMuch(`its ${wrong.key.split(".")[0]} would be ${Number(wrong.value.toPrecision(3))} mm thick, and a wall is ${min} to ${max} mm`);
	}
	const added = massOf(project, resolveAlone(project, made)).added;
	return ok({
		of: joint.id,
		joint: made,
		changed: [
			...changed,
			`walls × ${Number(factor.toPrecision(4))}, so that walls and adhesive weigh the same ${figure(target)} g: ${thicknessWords(made)}`,
			"the overlap is kept"
		],
		equal: {
			what: "mass",
			of: target,
			variant: added
		}
	});
}
function atEqualMargin(project, resolved, plain, changed, seen) {
	const { joint, index } = resolved;
	const { settings } = project;
	const [own] = governingModes(resolved, settings, true);
	if (!own) return refuse("bad-input", `joints.${index}.loads`, `The joint "${joint.name}" has no margin to be equal to: give it a load case.`);
	const target = own.result.margin;
	const step = settings.steps?.overlap ?? OVERLAP_STEP;
	let looked = 0;
	const known = /* @__PURE__ */ new Map();
	const lowestAt = (steps) => {
		const before = known.get(steps);
		if (before) return before;
		seen.progress(Math.min(looked++, LOOKS - 1), LOOKS, "overlaps");
		const sized = {
			...plain,
			overlap: overlapOf(steps, step)
		};
		const [lowest] = governingModes(resolveAlone(project, sized), settings, true);
		known.set(steps, lowest);
		return lowest;
	};
	const reaches = (steps) => lowestAt(steps).result.margin >= target;
	const most = Math.floor(500 / step + 1e-9);
	const least = Math.max(1, Math.ceil(quantities.overlap.min / step - 1e-9));
	const found = shortest(reaches, Math.min(Math.max(Math.round(joint.overlap / step), least), most), least, most);
	if (found === null) {
		const { result } = lowestAt(most);
		return refuse("not-computable", `joints.${index}.overlap`, `No overlap of the ${pliesOf(plain)} lap up to 500 mm reaches the margin ${signed(target)} of the joint as it is: ${modeLabel(result.mode, result.part)} stops it at ${signed(result.margin)}, whatever the overlap.`);
	}
	const { result } = lowestAt(found);
	const overlap = overlapOf(found, step);
	return ok({
		of: joint.id,
		joint: {
			...plain,
			overlap
		},
		changed: [
			...changed,
			`overlap ${millimetres(overlap)} instead of ${millimetres(joint.overlap)}: the shortest, in steps of ${step} mm, whose lowest margin ${signed(result.margin)} reaches ${signed(target)}`,
			"the walls are kept"
		],
		equal: {
			what: "margin",
			of: target,
			variant: result.margin
		}
	});
}
/** About as many overlaps as a search looks at. */
const LOOKS = 16;
const overlapOf = (steps, step) => Number((steps * step).toPrecision(12));
/**
* The shortest that holds next to one that does not, by doubling away from the start and halving
* between; `least` where even that holds, null where none does.
*/
function shortest(holds, start, least, most) {
	let [low, high] = [start, start];
	if (holds(start)) while (holds(low)) {
		if (low === least) return least;
		high = low;
		low = Math.max(least, Math.floor(low / 1.6));
	}
	else while (!holds(high)) {
		if (high === most) return null;
		low = high;
		high = Math.min(most, Math.ceil(high * 1.6));
	}
	while (high - low > 1) {
		const middle = Math.floor((low + high) / 2);
		if (holds(middle)) high = middle;
		else low = middle;
	}
	return high;
}
// src/main/handlers/compare-column.ts
/** One column of a comparison: everything that is set side by side, of one joint. */
/** How bond or plies end in one case. */
const bondFailures = /* @__PURE__ */ new Set([
	"adhesive-strain",
	"adhesive-peel",
	"interlaminar",
	"fracture"
]);
/** The worst of the joint's gaps; null where no load acts in the case. */
function strengthIn({ settings }, { input, adhesive }, { input: loaded }) {
	const found = gapStates(input).flatMap((gapState) => {
		const state = jointState(input, adhesive, loaded, gapState, settings);
		return allModes(state, adhesive, settings.factors, { only: bondFailures }).filter(({ mode }) => bondFailures.has(mode)).map((result) => refineStrength(state, result));
	});
	const lowest = (results) => results.toSorted((a, b) => a.reached - b.reached)[0];
	const shear = lowest(found.filter(({ mode }) => mode === "adhesive-strain"));
	const first = lowest(found.filter(({ shearFirst }) => !shearFirst));
	if (!shear || !first) return null;
	return {
		carried: {
			shear: shear.reached,
			first: {
				factor: first.reached,
				label: modeLabel(first.mode, first.part)
			}
		},
		theta: degrees(shear.theta)
	};
}
function sharesOf(resolved, stress) {
	const { bonds, overlap } = assemble(resolved.input, "nominal");
	const all = stress.bonds.reduce((sum, { force }) => sum + force, 0);
	return stress.bonds.map(({ part, force, peak, layered, strain }, j) => ({
		part,
		force,
		share: all === 0 ? 0 : force / all,
		area: bonds[j].width * overlap,
		peakShear: peak.value,
		peakPeel: layered.peak.value,
		strain
	}));
}
const nothing = {
	margins: [],
	lowest: null,
	stress: null,
	bonds: [],
	carried: null,
	mass: null,
	print: null,
	stiffness: null,
	flags: []
};
/** Strength of a column's bond in a case; null where it has none there. */
function strengthOf(project, { place, resolved }, caseId) {
	const found = resolved.cases.find(({ loadCase }) => loadCase.id === caseId);
	if (!found) return null;
	const reply = guardedAt(place, () => ok(strengthIn(project, resolved, found)));
	return reply.ok ? reply.value : null;
}
/** The rows of one column, or why there are none. */
function open(project, place) {
	const reply = guardedAt(place, () => {
		const resolved = resolveAlone(project, place.joint);
		return ok({
			place,
			resolved,
			rows: governingModes(resolved, project.settings)
		});
	});
	return reply.ok ? reply.value : reply.error;
}
/** The model's complaint, at the place that the joint really has. */
function guardedAt({ where }, compute) {
	const reply = guarded(0, compute);
	if (reply.ok) return reply;
	const field = reply.error.field.replace(/^joints\.0/, where);
	return {
		ok: false,
		error: {
			...reply.error,
			field
		}
	};
}
const headOf = ({ kind, joint }) => ({
	id: joint.id,
	kind,
	name: joint.name,
	description: describeJoint(joint),
	overlap: joint.overlap
});
const refusedColumn = (place, refused) => ({
	...headOf(place),
	...nothing,
	refused
});
function columnOf(project, { place, resolved, rows }, common, strength) {
	const reply = guardedAt(place, () => {
		const { settings } = project;
		const margins = rows.map((row) => toMargin(row, resolved, settings.targetMargin, ""));
		const { print, flags } = printingOf(project, resolved);
		const found = resolved.cases.find(({ loadCase }) => loadCase.id === common?.caseId);
		const focus = {
			...common,
			gapState: "nominal"
		};
		const stress = found ? stressOf(project, resolved, focus, rows) : ok(null);
		if (!stress.ok) return stress;
		const { temperature, moisture } = found?.loadCase ?? resolved.adhesive.states[0];
		const { springs, shear } = springsAt(project, resolved, {
			temperature,
			moisture
		});
		const names = found ? [found.loadCase.name] : [];
		return ok({
			...headOf(place),
			refused: null,
			margins,
			lowest: margins[0] ?? null,
			stress: stress.value,
			bonds: stress.value ? sharesOf(resolved, stress.value) : [],
			carried: strength?.carried ?? null,
			mass: massOf(project, resolved),
			print,
			stiffness: {
				temperature,
				moisture,
				names,
				springs,
				shear
			},
			flags: [...jointFlags(resolved), ...flags]
		});
	});
	return reply.ok ? reply.value : refusedColumn(place, reply.error);
}
// src/main/handlers/compare-words.ts
/** Ratios closer to one than this are not worth a word. */
const SAME = .02;
const differs = (ratio) => Math.abs(ratio - 1) > SAME;
/** `44 to 56 %`, rounded so that they make a hundred. */
function shareWords({ bonds }) {
	const [first] = bonds;
	const one = Math.round(first.share * 100);
	return `${one} to ${100 - one} %`;
}
const total = (column, of) => column.bonds.reduce((sum, bond) => sum + bond[of], 0);
const largest = (column, of) => Math.max(...column.bonds.map((bond) => Math.abs(bond[of])));
function facts(a, b) {
	const found = [];
	if (b.bonds.length > a.bonds.length) found.push({
		helps: true,
		text: `two bonds share the load ${shareWords(b)}`
	});
	else if (b.bonds.length < a.bonds.length) found.push({
		helps: false,
		text: `one bond carries what two shared ${shareWords(a)}`
	});
	const area = total(b, "area") / total(a, "area");
	if (differs(area)) found.push({
		helps: area > 1,
		text: `the bonded area is ${figure(area)} times as large`
	});
	const moved = (name, unit, of) => {
		const [was, is] = [largest(a, of), largest(b, of)];
		if (was === 0 || !differs(is / was)) return;
		const verb = is < was ? "falls" : "rises";
		found.push({
			helps: is < was,
			text: `${name} ${verb} from ${figure(was)} to ${figure(is)} ${unit}`
		});
	};
	moved("peak shear", "MPa", "peakShear");
	moved("peak peel", "MPa", "peakPeel");
	return found;
}
const joined = (texts) => {
	const last = texts[texts.length - 1];
	return texts.length === 1 ? last : `${texts.slice(0, -1).join(", ")} and ${last}`;
};
/** What the reader calls them: their laps where these differ, else their names. */
function calls(a, b) {
	const lapWord = ({ bonds }) => bonds.length === 2 ? "the double lap" : "the single lap";
	return a.bonds.length === b.bonds.length ? [`“${a.name}”`, `“${b.name}”`] : [lapWord(a), lapWord(b)];
}
const capital = (text) => text.charAt(0).toUpperCase() + text.slice(1);
/** Null where one of the two has no strength in the common case. */
function strengthSentence(a, b, sameLoads) {
	if (!a.carried || !b.carried || a.carried.shear <= 0) return null;
	if (!sameLoads) return `“${b.name}” carries ${figure(b.carried.shear)} times its own loads of the case before its bond fails in shear, “${a.name}” ${figure(a.carried.shear)} times its own: the loads differ, so these are no ratio of strength.`;
	const [first, second] = calls(a, b);
	const ratio = b.carried.shear / a.carried.shear;
	const more = ratio > 1;
	const head = differs(ratio) ? `${capital(second)} carries ${figure(ratio)} times the load of ${first} before its bond fails in shear` : `${capital(second)} carries as much as ${first} before its bond fails in shear`;
	const all = facts(a, b);
	const reasons = all.filter(({ helps }) => helps === more).map(({ text }) => text);
	const against = all.filter(({ helps }) => helps !== more).map(({ text }) => text);
	return `${head}${differs(ratio) && reasons.length > 0 ? `: ${joined(reasons)}${against.length > 0 ? `, although ${joined(against)}` : ""}` : all.length > 0 ? `; ${joined(all.map(({ text }) => text))}` : ""}. ${firstFailure(a, b)}`.trim();
}
/** The first failure of any kind, where it is not the same story as shear alone. */
function firstFailure(a, b) {
	const [one, other] = [a.carried.first, b.carried.first];
	if (one.factor >= a.carried.shear && other.factor >= b.carried.shear) return "";
	const ratio = other.factor / one.factor;
	if (one.label === other.label) return `What fails first in both is ${one.label}: at ${figure(one.factor)} and ${figure(other.factor)} times the case’s loads, ${figure(ratio)} times as much.`;
	return `What fails first is ${one.label} at ${figure(one.factor)} times the case’s loads, and ${other.label} at ${figure(other.factor)}: ${figure(ratio)} times as much.`;
}
/**
* One sentence for each further column beside the first.
* @param sameLoads whether a column has the first one's loads in the common case
*/
const sentencesOf = ([first, ...others], sameLoads) => others.flatMap((other, i) => first ? strengthSentence(first, other, sameLoads(i + 1)) ?? [] : []);
// src/main/handlers/compare.ts
/** Two to four joints or variants side by side, in one load case, with what differs and why. */
/** Where a column's joint stands in the project. */
function placeOf$1(project, column) {
	const isJoint = "joint" in column;
	const id = isJoint ? column.joint : column.variant;
	const list = isJoint ? project.joints : (project.variants ?? []).map(({ joint }) => joint);
	const index = list.findIndex((joint) => joint.id === id);
	if (index < 0) return refuse("not-found", isJoint ? "joints" : "variants", `There is no ${isJoint ? "joint" : "variant"} "${id}" in this project. It has: ${list.map((joint) => joint.id).join(", ") || "none"}.`);
	const where = isJoint ? `joints.${index}` : `variants.${index}.joint`;
	return ok({
		kind: isJoint ? "joint" : "variant",
		joint: list[index],
		where
	});
}
const isColumn = (one) => "rows" in one;
/**
* The case that all are compared in: the one asked for, else that of the lowest bond margin of the first
* column that every column carries.
*/
function commonCase(columns, caseId) {
	if (caseId !== void 0) return caseId;
	const carried = (id) => columns.every(({ resolved }) => resolved.cases.some(({ loadCase }) => loadCase.id === id));
	const [first] = columns;
	if (!first) return null;
	return [...first.rows.map(({ loadCase }) => loadCase.id), ...first.resolved.cases.map(({ loadCase }) => loadCase.id)].find(carried) ?? null;
}
function compare(project, { columns: wished, caseId }, seen = unwatched) {
	const places = [];
	for (const column of wished) {
		const place = placeOf$1(project, column);
		if (!place.ok) return place;
		if (places.some(({ joint }) => joint.id === place.value.joint.id)) return refuse("bad-request", "columns", `"${place.value.joint.id}" stands twice: set it beside another.`);
		places.push(place.value);
	}
	if (caseId !== void 0) for (const { joint, where } of places) {
		if (joint.loads.some((load) => load.case === caseId)) continue;
		return refuse("not-found", `${where}.loads`, `"${joint.name}" carries no load case "${caseId}". It has: ${joint.loads.map((load) => load.case).join(", ") || "none"}.`);
	}
	const total = 2 * places.length;
	const opened = places.map((place, i) => {
		seen.progress(i, total, place.joint.name);
		return open(project, place);
	});
	const good = opened.filter(isColumn);
	const id = commonCase(good, caseId);
	const strengths = /* @__PURE__ */ new Map();
	for (const [i, one] of good.entries()) {
		seen.progress(places.length + i, total, one.place.joint.name);
		strengths.set(one, id === null ? null : strengthOf(project, one, id));
	}
	const theta = (good[0] && strengths.get(good[0])?.theta) ?? 0;
	const common = id === null ? null : {
		caseId: id,
		theta
	};
	const columns = opened.map((one, i) => isColumn(one) ? columnOf(project, one, common, strengths.get(one) ?? null) : refusedColumn(places[i], one));
	const found = differences(project, places.map(({ joint }) => joint));
	const ofCase = found.filter(({ field }) => field.startsWith(`loads.${id}.`));
	return ok({
		caseId: id,
		caseName: project.loadCases.find((one) => one.id === id)?.name ?? "",
		columns,
		differences: found,
		sentences: sentencesOf(columns, (i) => ofCase.every(({ values }) => values[i] === values[0]))
	});
}
// src/model/card.ts
function equation(written) {
	const [symbol, label, unit] = written.result;
	const given = Object.entries(written.symbols);
	return {
		...written,
		symbols: given.map(([name, [text, of]]) => ({
			symbol: name,
			label: text,
			unit: of
		})),
		result: {
			symbol,
			label,
			unit
		},
		domains: written.domains ?? []
	};
}
const step = (of, values, result, criterion) => ({
	equation: of,
	values,
	result,
	...criterion ? { criterion } : {}
});
const nearly = (of, near) => ({
	...of,
	near
});
const COMMON_PRACTICE = "Common practice, no source.";
// src/model/joint/adhesive-state.card.ts
/** Properties of the adhesive at the service temperature. */
const SHEAR_MODULUS = {
	symbol: "G",
	label: "shear modulus of the adhesive",
	unit: "MPa",
	knocked: false
};
const MODULUS$2 = {
	symbol: "E",
	label: "modulus of the adhesive",
	unit: "MPa",
	knocked: false
};
const SHEAR_YIELD = {
	symbol: "tau_p",
	label: "yield shear of the adhesive",
	unit: "MPa",
	knocked: true
};
const PLASTIC_STRAIN = {
	symbol: "gamma_p",
	label: "plastic shear strain of the adhesive",
	unit: "",
	knocked: true
};
const PEEL_STRENGTH = {
	symbol: "sigma_p",
	label: "peel strength of the adhesive",
	unit: "MPa",
	knocked: true
};
const rowSymbol = (symbol, row) => symbol.includes("_") ? `${symbol}${row}` : `${symbol}_${row}`;
const LEFT = ["left of the strength", ""];
function common({ symbol, label, unit, knocked }) {
	const left = knocked ? " What the knockdowns leave of it counts." : "";
	return {
		id: `property-${symbol}`,
		title: label.charAt(0).toUpperCase() + label.slice(1),
		result: [
			symbol,
			knocked ? `${label}, knockdowns taken off` : label,
			unit
		],
		source: COMMON_PRACTICE,
		domains: ["outside-table"],
		left
	};
}
/** Between two rows of the same moisture. */
function betweenRows(property) {
	const { symbol, label, unit, knocked } = property;
	const [low, high] = [rowSymbol(symbol, 1), rowSymbol(symbol, 2)];
	const { left, ...rest } = common(property);
	const mixed = `${low} + (T - T_1)/(T_2 - T_1)*(${high} - ${low})`;
	return equation({
		...rest,
		statement: `On the straight line between the two rows of this moisture that hold the service temperature.${left}`,
		formula: knocked ? `(${mixed})*K` : mixed,
		symbols: {
			T: ["service temperature", "°C"],
			T_1: ["temperature of the row below", "°C"],
			T_2: ["temperature of the row above", "°C"],
			[low]: [`${label}, row below`, unit],
			[high]: [`${label}, row above`, unit],
			...knocked ? { K: LEFT } : {}
		}
	});
}
/** At a row, or beyond the table. */
function nearestRow(property) {
	const { symbol, label, unit, knocked } = property;
	const { left, ...rest } = common(property);
	const row = rowSymbol(symbol, 1);
	return equation({
		...rest,
		statement: `Of the row of this moisture at the service temperature, or of the nearest one: nothing is extrapolated.${left}`,
		formula: knocked ? `${row}*K` : row,
		symbols: {
			[row]: [`${label}, nearest row`, unit],
			...knocked ? { K: LEFT } : {}
		}
	});
}
// src/model/margins/capped-factor.card.ts
/** Peel with the shear of the bonds capped at yield. */
const SHELLS$2 = "Layered shells with the shear capped at yield, section 10 of the method.";
const DOMAINS$8 = [
	"short-overlap",
	"thick-wall",
	"built-in-root",
	"thick-bond",
	"outside-table",
	"gap-outside-table",
	"unbalanced-lap",
	"compressed-lap"
];
const FACTOR = ["factor on the loads, as found", ""];
const LOAD$2 = ["load at this clocking", "N"];
const cappedPeel = equation({
	id: "capped-peel",
	title: "Peel with the shear capped at yield",
	statement: "Where the bond has yielded its shear is given, and the shells are linear again: peel by temperature and by the shear that flows, and peel that the load adds.",
	formula: "sigma_f + lambda*P*sigma_1",
	symbols: {
		sigma_f: ["peel by temperature and flow, from the capped shells", "MPa"],
		lambda: FACTOR,
		P: LOAD$2,
		sigma_1: ["peel per newton, from the capped shells", "MPa/N"]
	},
	result: [
		"sigma",
		"peel, shear capped at yield",
		"MPa"
	],
	source: SHELLS$2,
	domains: DOMAINS$8
});
const cappedShear = equation({
	id: "capped-shear",
	title: "Shear, capped at yield",
	statement: "Shear along the axis from the capped shells, with that around it by the shear lag, never above yield.",
	formula: "min(tau_p, sqrt((tau_f + lambda*P*tau_1)^2 + (lambda*tau_theta)^2))",
	symbols: {
		tau_p: ["yield shear of the adhesive", "MPa"],
		tau_f: ["shear along by temperature and flow, from the capped shells", "MPa"],
		lambda: FACTOR,
		P: LOAD$2,
		tau_1: ["shear along per newton, from the capped shells", "MPa/N"],
		tau_theta: ["shear around per load factor, from the shear lag", "MPa"]
	},
	result: [
		"tau",
		"shear, capped at yield",
		"MPa"
	],
	source: SHELLS$2,
	domains: DOMAINS$8
});
const peelUse = equation({
	id: "peel-use",
	title: "Peel over peel strength",
	statement: "Peel ends the joint where it is the strength: at the factor found, this is 1.",
	formula: "sigma/sigma_p",
	symbols: {
		sigma: ["peel, shear capped at yield", "MPa"],
		sigma_p: ["peel strength of the adhesive", "MPa"]
	},
	result: [
		"u",
		"use of the peel strength",
		""
	],
	source: COMMON_PRACTICE,
	domains: DOMAINS$8
});
const shareOfStrength = equation({
	id: "peel-share",
	title: "Peel over peel strength",
	statement: "How much of the peel strength the largest peel of this state takes.",
	formula: "sigma/sigma_p",
	symbols: {
		sigma: ["largest peel in the bond", "MPa"],
		sigma_p: ["peel strength of the adhesive", "MPa"]
	},
	result: [
		"u",
		"share of the peel strength",
		""
	],
	source: COMMON_PRACTICE,
	domains: DOMAINS$8
});
const pliesUse = equation({
	id: "plies-use",
	title: "Between the plies",
	statement: "The face of the laminate carries the stress of the bond; root of the squares of the shares of its strengths across and between its plies. At the factor found, this is 1.",
	formula: "sqrt((max(sigma, 0)/Z_t)^2 + (tau/S_13)^2)",
	symbols: {
		sigma: ["peel, shear capped at yield", "MPa"],
		Z_t: ["strength across the plies", "MPa"],
		tau: ["shear, capped at yield", "MPa"],
		S_13: ["shear strength between the plies", "MPa"]
	},
	result: [
		"u",
		"use of the criterion",
		""
	],
	source: COMMON_PRACTICE,
	domains: DOMAINS$8
});
const shearDecides = equation({
	id: "shear-first",
	title: "Shear comes first",
	statement: "The bonds fail in shear before this mode is reached. Its factor is the least that it could be: that of adhesive, ultimate strain, in the same case and gap, or the elastic one where that is larger.",
	formula: "max(lambda_u, lambda_e)",
	symbols: {
		lambda_u: ["factor at which the adhesive reaches its ultimate strain", ""],
		lambda_e: ["factor at which the elastic shells reach the mode", ""]
	},
	result: [
		"lambda",
		"factor on the loads of the case",
		""
	],
	source: COMMON_PRACTICE
});
// src/model/margins/peel-factor.card.ts
/** Where peel, alone and with shear, and fracture reach their limit. */
const STRENGTH = ["peel strength of the adhesive", "MPa"];
const HELD = ["peel by temperature, from the layered shells", "MPa"];
const PEEL = ["elastic peel", "MPa"];
const SHEAR$1 = ["elastic shear", "MPa"];
const GAP$1 = ["gap", "mm"];
const DOMAINS$7 = [
	"short-overlap",
	"thick-wall",
	"built-in-root",
	"thick-bond",
	"outside-table",
	"gap-outside-table",
	"unbalanced-lap",
	"compressed-lap"
];
const elasticReach = equation({
	id: "elastic-reach",
	title: "Factor by elastic peel",
	statement: "The loads grow, thermal peel stays, until elastic peel is the strength at its worst place. Where the bond does not yield on the way this is the factor; where it does, it is a lower bound.",
	formula: "(sigma_p - sigma_T)/(sigma_1*P)",
	symbols: {
		sigma_p: STRENGTH,
		sigma_T: HELD,
		sigma_1: ["peel per newton, from the layered shells", "MPa/N"],
		P: ["load at this clocking", "N"]
	},
	result: [
		"lambda_e",
		"factor by elastic peel",
		""
	],
	source: COMMON_PRACTICE,
	domains: DOMAINS$7
});
const peeledCold = equation({
	id: "elastic-reach",
	title: "Peeled by temperature alone",
	statement: "Thermal peel alone is the strength or more: nothing is left for the load.",
	formula: "max(0, 1 - sigma_T/sigma_p)",
	symbols: {
		sigma_p: STRENGTH,
		sigma_T: HELD
	},
	result: [
		"lambda",
		"factor on the loads of the case",
		""
	],
	source: COMMON_PRACTICE,
	domains: DOMAINS$7
});
/** Peel (or the pull between plies) and shear against their strengths, at a factor. */
const together = (id, title, statement, tension, shear, symbols) => equation({
	id,
	title,
	statement,
	formula: `(max(sigma, 0)/${symbols[0]})^2 + (tau/${symbols[1]})^2`,
	symbols: {
		sigma: PEEL,
		[symbols[0]]: tension,
		tau: SHEAR$1,
		[symbols[1]]: shear
	},
	result: [
		"u",
		"use of the criterion",
		""
	],
	source: COMMON_PRACTICE,
	domains: DOMAINS$7
});
const peelWithShear = together("peel-shear-use", "Peel and shear together", "First yield under both: the squares of the shares of peel strength and yield shear add up to 1 at the factor found; compression is no peel.", STRENGTH, ["yield shear of the adhesive", "MPa"], ["sigma_p", "tau_p"]);
const pliesElastic = together("plies-use", "Between plies, elastic", "The face of the laminate carries the stress of the bond: squares of the shares of its strengths across and between its plies.", ["strength across the plies", "MPa"], ["shear strength between the plies", "MPa"], ["Z_t", "S_13"]);
const cold = (title, tension, shear, symbols) => equation({
	id: "reached-cold",
	title,
	statement: "Temperature alone reaches the criterion: nothing is left for the load.",
	formula: `max(0, 1 - (max(sigma, 0)/${symbols[0]})^2 - (tau/${symbols[1]})^2)`,
	symbols: {
		sigma: PEEL,
		[symbols[0]]: tension,
		tau: SHEAR$1,
		[symbols[1]]: shear
	},
	result: [
		"lambda",
		"factor on the loads of the case",
		""
	],
	source: COMMON_PRACTICE,
	domains: DOMAINS$7
});
const peelShearCold = cold("Reached by temperature alone", STRENGTH, ["yield shear of the adhesive", "MPa"], ["sigma_p", "tau_p"]);
const pliesCold = cold("Parted by temperature alone", ["strength across the plies", "MPa"], ["shear strength between the plies", "MPa"], ["Z_t", "S_13"]);
const IRWIN = "Strain energy of the layer at its free end; G. R. Irwin for its meaning, from memory.";
const openingRate = equation({
	id: "release-opening",
	title: "Energy released in opening",
	statement: "What the layer at the end of the bond holds in peel is what a crack there sets free.",
	formula: "h*max(sigma, 0)^2/(2*E_c)",
	symbols: {
		h: GAP$1,
		sigma: PEEL,
		E_c: ["modulus across the bond", "MPa"]
	},
	result: [
		"G_I",
		"energy released in mode I",
		"N/mm"
	],
	source: IRWIN,
	domains: DOMAINS$7
});
const slidingRate = equation({
	id: "release-sliding",
	title: "Energy released in sliding",
	statement: "The same in shear.",
	formula: "h*tau^2/(2*G)",
	symbols: {
		h: GAP$1,
		tau: SHEAR$1,
		G: ["shear modulus of the adhesive", "MPa"]
	},
	result: [
		"G_II",
		"energy released in mode II",
		"N/mm"
	],
	source: IRWIN,
	domains: DOMAINS$7
});
const mixed = equation({
	id: "fracture-use",
	title: "Both modes together",
	statement: "A crack at the end of the bond grows where the mix is 1; at the factor found it is.",
	formula: "(G_I/G_Ic)^m + (G_II/G_IIc)^m",
	symbols: {
		G_I: ["energy released in mode I", "N/mm"],
		G_Ic: ["energy that a crack takes in mode I", "N/mm"],
		G_II: ["energy released in mode II", "N/mm"],
		G_IIc: ["energy that a crack takes in mode II", "N/mm"],
		m: ["exponent of the mix", ""]
	},
	result: [
		"u",
		"use of the criterion",
		""
	],
	source: COMMON_PRACTICE,
	domains: DOMAINS$7
});
// src/model/joint/knockdown.card.ts
/** What the knockdowns leave of the strength. */
const gapBetween = equation({
	id: "gap-factor",
	title: "Strength at this gap",
	statement: "The strength of a thick or thin bond over that of the coupons, on the straight line between the two rows of the table that hold the gap.",
	formula: "k_1 + (h - h_1)/(h_2 - h_1)*(k_2 - k_1)",
	symbols: {
		h: ["gap", "mm"],
		h_1: ["gap of the row below", "mm"],
		h_2: ["gap of the row above", "mm"],
		k_1: ["strength left in the row below", ""],
		k_2: ["strength left in the row above", ""]
	},
	result: [
		"k_gap",
		"left of the strength at this gap",
		""
	],
	source: COMMON_PRACTICE,
	domains: ["gap-outside-table"]
});
const ledger = equation({
	id: "knockdown",
	title: "Knockdowns",
	statement: "What environment, gap, ageing and scatter leave of the strength. It shrinks the shear stress-strain curve about its origin: yield stress and plastic strain fall by K, the modulus stays.",
	formula: "k_env*k_gap*k_age*k_scatter",
	symbols: {
		k_env: ["left by the environment", ""],
		k_gap: ["left at this gap", ""],
		k_age: ["left by ageing", ""],
		k_scatter: ["left by scatter", ""]
	},
	result: [
		"K",
		"left of the strength",
		""
	],
	source: COMMON_PRACTICE,
	domains: ["gap-outside-table"]
});
const energy = (mode, word) => equation({
	id: `fracture-energy-${mode}`,
	title: `Fracture energy, ${word}`,
	statement: "Energies go with the square of stress, so the knockdown takes them by its square.",
	formula: "G_0*K^2",
	symbols: {
		G_0: [`fracture energy in mode ${mode} as entered`, "N/mm"],
		K: ["left of the strength", ""]
	},
	result: [
		`G_${mode}c`,
		`energy that a crack takes in mode ${mode}`,
		"N/mm"
	],
	source: COMMON_PRACTICE
});
const openingEnergy = energy("I", "opening");
const slidingEnergy = energy("II", "sliding");
// src/model/working/adhesive.ts
/** The adhesive behind a bond: knockdowns and its properties at temperature. */
function knockdownSteps({ state, adhesive }, j) {
	const { knockdowns } = adhesive;
	if (!knockdowns) return [];
	const own = state.ledgers[j];
	const { gap } = state.assembly.bonds[j];
	const rows = gapRows(knockdowns.gap, gap);
	const steps = [];
	if (rows) {
		const [below, above] = rows;
		steps.push(step(gapBetween, {
			h: gap,
			h_1: below.gap,
			h_2: above.gap,
			k_1: below.factor,
			k_2: above.factor
		}, own.gap));
	}
	steps.push(step(ledger, {
		k_env: own.environment,
		k_gap: own.gap,
		k_age: own.ageing,
		k_scatter: own.scatter
	}, own.left));
	return steps;
}
function propertyStep({ state, adhesive }, j, property, field) {
	const { temperature, moisture } = state.loadCase;
	const { below, above } = rowsAt(adhesive, temperature, moisture);
	const { left } = state.ledgers[j];
	const own = state.adhesives[j][field];
	const knocked = property.knocked ? { K: left } : {};
	const low = { [rowSymbol(property.symbol, 1)]: below[field] };
	if (below === above) return step(nearestRow(property), {
		...low,
		...knocked
	}, own);
	const values = {
		T: temperature,
		T_1: below.temperature,
		T_2: above.temperature,
		...low,
		[rowSymbol(property.symbol, 2)]: above[field],
		...knocked
	};
	return step(betweenRows(property), values, own);
}
// src/model/margins/asked.card.ts
/** The factor asked for, and the margin. */
const asked = equation({
	id: "asked",
	title: "Factor asked for",
	statement: "The project's factor for this mode, times the fitting factor. The loads of an ultimate case hold their factor already: 1.",
	formula: "f*f_fit",
	symbols: {
		f: ["factor for this mode and kind of case", ""],
		f_fit: ["fitting factor", ""]
	},
	result: [
		"asked",
		"factor asked for",
		""
	],
	source: COMMON_PRACTICE
});
const margin = equation({
	id: "margin",
	title: "Margin",
	statement: "How much more than asked the joint can do, as a share of what is asked.",
	formula: "lambda/asked - 1",
	symbols: {
		lambda: ["factor on the loads of the case at which it is reached", ""],
		asked: ["factor asked for", ""]
	},
	result: [
		"MS",
		"margin",
		""
	],
	source: COMMON_PRACTICE
});
// src/model/working/context.ts
/** Index of a bond by its name. */
function bondIndex({ assembly }, part) {
	return Math.max(0, assembly.bonds.findIndex(({ name }) => name === part));
}
/** The factor asked for and the margin: the last two cards of every mode. */
function marginSteps({ state, settings, result }) {
	const { factors } = settings;
	const own = askedFactor(result.mode, state.loadCase.kind, {
		...factors,
		fitting: 1
	});
	return [step(asked, {
		f: own ?? 1,
		f_fit: factors.fitting
	}, result.asked), step(margin, {
		lambda: result.reached,
		asked: result.asked
	}, result.margin)];
}
// src/model/joint/local-problem.card.ts
/** Loads at a clocking, and stiffness of the walls under them. */
const BEAM$1 = "Common beam theory, no source.";
const FORCE$2 = ["axial force of the case", "N"];
const RADIUS = ["reference radius: of the bond, or of the tube between two", "mm"];
const ANGLE = ["clocking from the plane of bending", "rad"];
const axialLoad = equation({
	id: "axial-load",
	title: "Line load at the clocking",
	statement: "Force and moment as the line load at this clocking, taken all the way round: pure force and pure bending are then both exact.",
	formula: "F + 2*M*cos(theta)/r",
	symbols: {
		F: FORCE$2,
		M: ["moment of the case", "N*mm"],
		theta: ANGLE,
		r: RADIUS
	},
	result: [
		"P",
		"axial load at this clocking",
		"N"
	],
	source: BEAM$1
});
const flatLoad = equation({
	id: "axial-load",
	title: "Load",
	statement: "A flat joint carries the force of the case.",
	formula: "F",
	symbols: { F: FORCE$2 },
	result: [
		"P",
		"axial load",
		"N"
	],
	source: BEAM$1
});
const hoopLoad = equation({
	id: "hoop-load",
	title: "Load around the tube at the clocking",
	statement: "Torque and transverse shear as the circumferential line load at this clocking, taken all the way round.",
	formula: "T/r + 2*V*sin(theta)",
	symbols: {
		T: ["torque of the case", "N*mm"],
		r: RADIUS,
		V: ["transverse shear of the case", "N"],
		theta: ANGLE
	},
	result: [
		"P_theta",
		"circumferential load at this clocking",
		"N"
	],
	source: BEAM$1
});
const stiffnessOf = (wall) => [
	`K_${wall}`,
	"stiffness of the wall",
	"N"
];
/** @param wall `t` or `s` @param name the part */
const pulledWall = (wall, name) => equation({
	id: `wall-stiffness-${wall}`,
	title: `Stiffness of the ${name}`,
	statement: "Force per strain of the wall along the axis.",
	formula: "E*A",
	symbols: {
		E: ["axial modulus", "MPa"],
		A: ["area of the wall", "mm^2"]
	},
	result: stiffnessOf(wall),
	source: BEAM$1,
	domains: ["thick-wall"]
});
const bentWall = (wall, name) => equation({
	id: `wall-stiffness-${wall}`,
	title: `Stiffness of the ${name}`,
	statement: "Force per strain of the wall along the axis: flexibility under force and under bending, each by its share of the line load.",
	formula: "E/(w_F/A + w_M*r^2/(2*I))",
	symbols: {
		E: ["axial modulus", "MPa"],
		w_F: ["share of the force in the line load", ""],
		w_M: ["share of the moment in the line load", ""],
		A: ["area of the wall", "mm^2"],
		I: ["second moment of the wall about a diameter", "mm^4"],
		r: RADIUS
	},
	result: stiffnessOf(wall),
	source: `${BEAM$1} The weighting: ${COMMON_PRACTICE.toLowerCase()}`,
	domains: ["thick-wall"]
});
const twistedWall = (wall, name) => equation({
	id: `wall-torsion-${wall}`,
	title: `Torsional stiffness of the ${name}`,
	statement: "Circumferential force per shear strain of the wall, at the reference radius.",
	formula: "G*J/r^2",
	symbols: {
		G: ["in-plane shear modulus", "MPa"],
		J: ["polar second moment of the wall", "mm^4"],
		r: RADIUS
	},
	result: stiffnessOf(wall),
	source: BEAM$1,
	domains: ["thick-wall"]
});
const equilibrium = equation({
	id: "shared-load",
	title: "How the bonds share the load",
	statement: "Two bonds, or a tapered wall, have no closed form that fits on a card: the equations of section 4 are solved, and what the bonds hand over is the load.",
	formula: "N_1 + N_2",
	symbols: {
		N_1: ["force that the first bond hands over, as solved", "N"],
		N_2: ["force that the second bond hands over, as solved; 0 with one bond", "N"]
	},
	result: [
		"P",
		"load at this clocking",
		"N"
	],
	source: "L. J. Hart-Smith (1973), double laps; equilibrium."
});
// src/model/layered/of-joint.card.ts
/** The adhesive as a layer that its neighbours keep from contracting. */
const MODULUS$1 = ["modulus of the adhesive", "MPa"];
const ELASTICITY = "Theory of elasticity, no source.";
const poisson = equation({
	id: "adhesive-poisson",
	title: "Poisson's ratio of the adhesive",
	statement: "From its two moduli, kept within what a solid can have.",
	formula: "min(0.45, max(0, E/(2*G) - 1))",
	symbols: {
		E: MODULUS$1,
		G: ["shear modulus of the adhesive", "MPa"]
	},
	result: [
		"nu",
		"Poisson's ratio of the adhesive",
		""
	],
	source: ELASTICITY,
	domains: ["adhesive-moduli"]
});
const constrained = equation({
	id: "constrained-modulus",
	title: "Modulus across the bond",
	statement: "A thin layer between stiff walls cannot contract sideways, and is the stiffer for it.",
	formula: "E*(1 - nu)/((1 + nu)*(1 - 2*nu))",
	symbols: {
		E: MODULUS$1,
		nu: ["Poisson's ratio of the adhesive", ""]
	},
	result: [
		"E_c",
		"modulus across the bond",
		"MPa"
	],
	source: ELASTICITY,
	domains: ["adhesive-moduli", "thick-bond"]
});
// src/model/layered/opening-law.card.ts
/** How far a bond opens under peel. */
const MADE = "Shares of the walls set by finite elements, in the verification book.";
const PER_MM = "mm/MPa";
/** A flat joint's walls lie below and above the bond, a tube's inside and outside of it. */
const opening = (first, second) => equation({
	id: "opening-flexibility",
	title: "Flexibility across the bond",
	statement: "Opening per peel: the layer, and a quarter of each wall beside it; a wall whose modulus through the thickness is not known counts as rigid.",
	formula: "h/E_c + (f_1 + f_2)/4",
	symbols: {
		h: ["gap", "mm"],
		E_c: ["modulus across the bond", "MPa"],
		f_1: [`thickness over modulus of the wall ${first} the bond, 0 where not known`, PER_MM],
		f_2: [`thickness over modulus of the wall ${second} the bond, 0 where not known`, PER_MM]
	},
	result: [
		"F_j",
		"flexibility across the bond",
		PER_MM
	],
	source: MADE,
	domains: ["thick-bond"]
});
const openingFlexibility = opening("inside", "outside");
const flatOpeningFlexibility = opening("below", "above");
const STIFFNESS = [
	"K_n",
	"peel per opening of the bond",
	"MPa/mm"
];
const OWN = ["flexibility across the bond", PER_MM];
const openingStiffness = equation({
	id: "opening-stiffness",
	title: "Stiffness across the bond",
	statement: "Peel per opening of the bond.",
	formula: "1/F_j",
	symbols: { F_j: OWN },
	result: STIFFNESS,
	source: MADE,
	domains: ["thick-bond"]
});
const openingStiffnessOfTwo = equation({
	id: "opening-stiffness",
	title: "Stiffness across the bond",
	statement: "Peel per opening of this bond while the other does not open: the wall between them gives way to both.",
	formula: "1/(F_j - F_12^2/F_k)",
	symbols: {
		F_j: OWN,
		F_12: ["an eighth of thickness over modulus of the wall between", PER_MM],
		F_k: ["flexibility across the other bond", PER_MM]
	},
	result: STIFFNESS,
	source: MADE,
	domains: ["thick-bond"]
});
// src/model/margins/bond-fields.card.ts
/** What pulls the layered shells, and the elastic stresses that they answer with. */
const FORCE$1 = ["axial force of the case", "N"];
const coveredLoad = (what) => equation({
	id: `${what}-load`,
	title: `Load at the clocking, for ${what}`,
	statement: `Force and moment as one line load at the tube's mean radius. The moment's part counts by what it does at this place in ${what}: the first harmonic of the shells over the same line load all round.`,
	formula: "F + c*2*M*cos(theta)/R_t",
	symbols: {
		F: FORCE$1,
		c: ["weight of the moment's part at this place", ""],
		M: ["moment of the case", "N*mm"],
		theta: ["clocking from the plane of bending", "rad"],
		R_t: ["tube's mean radius", "mm"]
	},
	result: [
		"P",
		"load at this clocking",
		"N"
	],
	source: "Layered shells, section 10 of the method: first harmonic over the same line load."
});
const wallLoad = equation({
	id: "wall-load",
	title: "Load that bends the walls",
	statement: "Force and moment as the line load at the tube's mean radius.",
	formula: "F + 2*M*cos(theta)/R_t",
	symbols: {
		F: FORCE$1,
		M: ["moment of the case", "N*mm"],
		theta: ["clocking from the plane of bending", "rad"],
		R_t: ["tube's mean radius", "mm"]
	},
	result: [
		"P",
		"load at this clocking",
		"N"
	],
	source: "Common beam theory, no source."
});
const SHELLS$1 = "Layered shells, section 10 of the method; Goland and Reissner (1944) for their idea.";
const DOMAINS$6 = [
	"short-overlap",
	"thick-wall",
	"built-in-root",
	"thick-bond",
	"unbalanced-lap",
	"compressed-lap"
];
const elasticPeel = equation({
	id: "elastic-peel",
	title: "Elastic peel at the factor",
	statement: "Peel is what temperature leaves and what the load adds; both come from the layered shells at this place.",
	formula: "sigma_T + lambda*sigma_1*P",
	symbols: {
		sigma_T: ["peel by temperature, from the layered shells", "MPa"],
		lambda: ["factor on the loads", ""],
		sigma_1: ["peel per newton, from the layered shells", "MPa/N"],
		P: ["load at this clocking", "N"]
	},
	result: [
		"sigma",
		"elastic peel",
		"MPa"
	],
	source: SHELLS$1,
	domains: DOMAINS$6
});
const elasticShear = equation({
	id: "elastic-shear",
	title: "Elastic shear at the factor",
	statement: "Shear along the axis from the layered shells, around it by the shear lag of torque and transverse shear, together.",
	formula: "sqrt((tau_T + lambda*tau_1*P)^2 + (lambda*tau_theta)^2)",
	symbols: {
		tau_T: ["shear along by temperature, from the layered shells", "MPa"],
		lambda: ["factor on the loads", ""],
		tau_1: ["shear along per newton, from the layered shells", "MPa/N"],
		P: ["load at this clocking", "N"],
		tau_theta: ["shear around per load factor, from the shear lag", "MPa"]
	},
	result: [
		"tau",
		"elastic shear",
		"MPa"
	],
	source: SHELLS$1,
	domains: DOMAINS$6
});
/** @param capped whether the bond yields and the shear is capped */
const drawnPeel = (capped) => equation({
	id: "peak-peel",
	title: "Largest peel in the bond",
	statement: capped ? "The bond yields under these loads: with its shear capped at yield, peel by temperature and flow, and what the load adds." : "Peel is what temperature leaves and what the load adds; both come from the layered shells at this place.",
	formula: "sigma_f + lambda*P*sigma_1",
	symbols: {
		sigma_f: [capped ? "peel by temperature and flow, from the capped shells" : "peel by temperature, from the layered shells", "MPa"],
		lambda: ["factor on the loads of the case", ""],
		P: ["load at this clocking", "N"],
		sigma_1: ["peel per newton, from the layered shells", "MPa/N"]
	},
	result: [
		"sigma",
		"largest peel in the bond",
		"MPa"
	],
	source: SHELLS$1,
	domains: DOMAINS$6
});
// src/model/peel/outer-adherend.card.ts
const estimate = equation({
	id: "peel-estimate",
	title: "An estimate to compare with",
	statement: "A plate on an elastic foundation, bent by the yield shear on its face: peel at the free end of the outer adherend of a double lap, the load at which the bond yields. No margin rests on it.",
	formula: "tau_p*(3*E*(1 - nu_s^2)*t/(E_s*h))^(1/4)",
	symbols: {
		tau_p: ["yield shear of the adhesive", "MPa"],
		E: ["modulus of the adhesive", "MPa"],
		nu_s: ["Poisson's ratio of the outer adherend", ""],
		t: ["its wall at the mouth", "mm"],
		E_s: ["its axial modulus", "MPa"],
		h: ["gap", "mm"]
	},
	result: [
		"sigma_est",
		"peel by the estimate",
		"MPa"
	],
	source: "L. J. Hart-Smith (1973), double laps."
});
// src/model/peel/outer-adherend.ts
/**
* First estimate of the peel at the free end of an outer adherend of a double lap: a semi-infinite
* plate on an elastic foundation, bent by the shear τ on its face (L. J. Hart-Smith, double laps).
*
*   σ = τ·(3·E_c·(1 − ν²)·t / (E·h))^(1/4)
*
* E_c is the adhesive's modulus through the bond, t, E and ν the outer adherend's wall, modulus and
* Poisson ratio, h the gap. Valid where the wall is thin and long against its decay length; says
* nothing of a single lap, where the eccentric load path adds its own moment.
*
* @returns peel stress, MPa
*/
function outerAdherendPeel(shear, adhesiveModulus, thickness, modulus, poisson, gap) {
	return shear * (3 * adhesiveModulus * (1 - poisson * poisson) * thickness / (modulus * gap)) ** .25;
}
// src/model/working/layer.ts
/** Peel by the layered shells: the layer across the bond, the load, and the stresses at a place. */
/** Moduli of the adhesive and the modulus across the bond. */
function moduliSteps(given, j) {
	const adhesive = given.state.adhesives[j];
	const nu = adhesivePoisson(adhesive);
	return [
		propertyStep(given, j, MODULUS$2, "modulus"),
		propertyStep(given, j, SHEAR_MODULUS, "shearModulus"),
		step(poisson, {
			E: adhesive.modulus,
			G: adhesive.shearModulus
		}, nu),
		step(constrained, {
			E: adhesive.modulus,
			nu
		}, constrainedModulus(adhesive))
	];
}
const peelStrengthStep = (given, j) => propertyStep(given, j, PEEL_STRENGTH, "peelStrength");
/** Flexibility and stiffness across bond j at the mouth. */
function openingSteps({ state }, j) {
	const { assembly, adhesives, deltaT } = state;
	const section = layeredLap(assembly, adhesives, deltaT).sectionAt(assembly.overlap);
	const flexibility = openingFlexibility$1(section);
	const stiffness = normalStiffness(section);
	const count = section.bonds.length;
	const of = (i, k) => flexibility[i * count + k];
	const own = step(assembly.flat ? flatOpeningFlexibility : openingFlexibility, {
		h: section.bonds[j].gap,
		E_c: section.bonds[j].constrainedModulus,
		f_1: section.shells[j].throughFlexibility,
		f_2: section.shells[j + 1].throughFlexibility
	}, of(j, j));
	const result = stiffness[j * count + j];
	if (count === 1) return [own, step(openingStiffness, { F_j: of(j, j) }, result)];
	const other = 1 - j;
	const values = {
		F_j: of(j, j),
		F_12: of(j, other),
		F_k: of(other, other)
	};
	return [own, step(openingStiffnessOfTwo, values, result)];
}
/** @param bounded for a capped state, where one load stands for force and moment */
function pullStep({ state }, theta, what, place, bounded = false) {
	const { assembly, loadCase } = state;
	const { force, moment } = loadCase.loads;
	const c = (bounded ? boundedCover : coverAt)(state, what, place.bond, place.x);
	const load = pullAt(state, theta, c);
	if (assembly.flat) return step(flatLoad, { F: force }, load);
	const R_t = assembly.tube.root.meanRadius;
	return step(coveredLoad(what), {
		F: force,
		c,
		M: moment,
		theta,
		R_t
	}, load);
}
/** The load that bends the walls: no cover, for their strength has its own factors. */
function pullStepPlain({ state }, theta) {
	const { assembly, loadCase } = state;
	const { force, moment } = loadCase.loads;
	const load = pullAt(state, theta);
	if (assembly.flat) return step(flatLoad, { F: force }, load);
	return step(wallLoad, {
		F: force,
		M: moment,
		theta,
		R_t: assembly.tube.root.meanRadius
	}, load);
}
/** @param factor at which a flat single lap bends */
function spotAt({ state }, theta, factor, j, place) {
	let found;
	bondFields(state).visit(theta, factor, (sample) => {
		if (sample.bond !== j) return;
		if (found === void 0 || Math.abs(sample.x - place) < Math.abs(found.x - place)) found = { ...sample };
	});
	const sample = found;
	const peelPull = pullAt(state, theta, coverAt(state, "peel", j, sample.x));
	const { x, unit } = state.layered.fields(factor * state.loadCase.loads.force);
	const i = x.indexOf(sample.x);
	const field = unit.bonds[j];
	return {
		sample,
		peelPull,
		shearPull: pullAt(state, theta, coverAt(state, "shear", j, sample.x)),
		peelPerNewton: field.peel[i],
		shearPerNewton: field.shear[i]
	};
}
const peelOf = ({ peelHeld, peelLoad }, factor) => peelHeld + factor * peelLoad;
const shearOf = ({ shearHeld, shearLoad, around }, factor) => Math.hypot(shearHeld + factor * shearLoad, factor * around);
const elasticPeelStep = (spot, factor) => step(elasticPeel, {
	sigma_T: spot.sample.peelHeld,
	lambda: factor,
	sigma_1: spot.peelPerNewton,
	P: spot.peelPull
}, peelOf(spot.sample, factor));
const elasticShearStep = (spot, factor) => step(elasticShear, {
	tau_T: spot.sample.shearHeld,
	lambda: factor,
	tau_1: spot.shearPerNewton,
	P: spot.shearPull,
	tau_theta: spot.sample.around
}, shearOf(spot.sample, factor));
/** Double laps only: the plate on a foundation. */
function estimateSteps({ state }, j) {
	const { assembly, adhesives, bonds } = state;
	if (assembly.bonds.length < 2) return [];
	const outer = assembly.outers[j];
	const { axialModulus, poisson: nu } = plateProperties(outer.material);
	const t = outer.mouth.thickness;
	const h = assembly.bonds[j].gap;
	const tau = bonds[j].shearYield;
	const { modulus } = adhesives[j];
	if (!(1 - nu * nu > 0)) return [];
	return [step(estimate, {
		tau_p: tau,
		E: modulus,
		nu_s: nu,
		t,
		E_s: axialModulus,
		h
	}, outerAdherendPeel(tau, modulus, t, axialModulus, nu, h))];
}
// src/model/working/peel.ts
/** Peel and failure between plies: the layered shells with the shear capped at yield. */
const ELASTIC = {
	target: 1,
	tolerance: 1e-6,
	why: "root of the elastic solution; a flat single lap bends as the factor of its last round asks"
};
const CAPPED = {
	target: 1,
	tolerance: 1e-4,
	why: "the capped factor is sought to 1e-6, and its zones settle to their own tolerance"
};
/** Knockdowns, moduli and the stiffness across the bond, common to all modes of peel. */
const layerSteps = (given, j) => [
	...knockdownSteps(given, j),
	...moduliSteps(given, j),
	...openingSteps(given, j)
];
const yieldStep = (given, j) => propertyStep(given, j, SHEAR_YIELD, "shearYield");
function peelWorking(given) {
	const { state, result } = given;
	const j = bondIndex(state, result.part);
	const strengths = state.adhesives.map(({ peelStrength }) => peelStrength);
	const sigma_p = strengths[j];
	const elastic = worst(state, bondFields(state), (sample) => peelFactor(sample, strengths[sample.bond]));
	const before = [
		...layerSteps(given, j),
		peelStrengthStep(given, j),
		...estimateSteps(given, j),
		pullStep(given, result.theta, "peel", placeOf(elastic, given), true)
	];
	if (result.reached === 0 && !result.shearFirst) {
		const { sample } = spotAt(given, result.theta, 0, j, result.x);
		const cold = step(peeledCold, {
			sigma_p,
			sigma_T: sample.peelHeld
		}, 0);
		return [
			...before,
			cold,
			...marginSteps(given)
		];
	}
	const place = cappedPlace(given, j, elastic);
	return [
		...before,
		...elastic ? reachSteps(given, elastic) : [],
		...isElastic(given, elastic) || !place ? [] : [peelStepOf(place), step(peelUse, {
			sigma: place.peel,
			sigma_p
		}, place.peel / sigma_p, result.shearFirst ? void 0 : CAPPED)],
		...shearFirstSteps(given, elastic),
		...marginSteps(given)
	];
}
/** The factor is the elastic one: the bonds do not yield on the way, or keep no capped state. */
const isElastic = ({ result }, elastic) => elastic !== null && !result.shearFirst && result.reached === elastic.factor;
function reachSteps(given, { factor, bond, x, theta }) {
	const { sample, peelPerNewton, peelPull } = spotAt(given, theta, factor, bond, x);
	if (!Number.isFinite(factor) || factor === 0) return [];
	const values = {
		sigma_p: given.state.adhesives[bond].peelStrength,
		sigma_T: sample.peelHeld,
		sigma_1: peelPerNewton,
		P: peelPull
	};
	return [step(elasticReach, values, factor)];
}
/** Where the elastic factor was found: there the capped state takes its load. */
const placeOf = (elastic, { state, result }) => elastic ?? {
	bond: bondIndex(state, result.part),
	x: result.x
};
function cappedPlace(given, j, elastic) {
	const { state, result } = given;
	const { reached: factor, theta, x } = result;
	const { sample } = spotAt(given, theta, factor, j, x);
	const { bond, x: at0 } = placeOf(elastic, given);
	const pull = pullAt(state, theta, boundedCover(state, "peel", bond, at0));
	const load = factor * pull;
	const capped = state.layered.capped(load);
	if (!capped) return null;
	const at = (newtons, share) => {
		const { peel, shear } = capped.solution.at(sample.x, newtons, share).stresses;
		return {
			peel: peel[j],
			shear: shear[j]
		};
	};
	const whole = at(load, 1);
	const yields = state.bonds[j].shearYield;
	return {
		factor,
		pull,
		around: sample.around,
		yields,
		held: at(0, 1),
		perNewton: at(1, 0),
		peel: whole.peel,
		shear: Math.min(Math.hypot(whole.shear, sample.around * factor), yields)
	};
}
const peelStepOf = ({ held, factor, pull, perNewton, peel }) => step(cappedPeel, {
	sigma_f: held.peel,
	lambda: factor,
	P: pull,
	sigma_1: perNewton.peel
}, peel);
const shearStepOf = (place) => step(cappedShear, {
	tau_p: place.yields,
	tau_f: place.held.shear,
	lambda: place.factor,
	P: place.pull,
	tau_1: place.perNewton.shear,
	tau_theta: place.around
}, place.shear);
function shearFirstSteps({ state, adhesive, settings, result }, elastic) {
	if (!result.shearFirst) return [];
	const only = /* @__PURE__ */ new Set(["adhesive-strain"]);
	const [strength] = adhesiveModes(state, adhesive, settings.factors, { only });
	const lambda_u = strength?.reached ?? result.reached;
	return [step(shearDecides, {
		lambda_u,
		lambda_e: elastic?.factor ?? lambda_u
	}, result.reached)];
}
function pliesWorking(given) {
	const { state, result } = given;
	const j = bondIndex(state, result.part);
	const all = interlaminarOf(state);
	const faces = all[j];
	const elastic = worst(state, bondFields(state), interlaminarFactor(all));
	const before = [...layerSteps(given, j), ...isElastic(given, elastic) ? ["peel", "shear"].map((what) => pullStep(given, result.theta, what, placeOf(elastic, given))) : [pullStep(given, result.theta, "peel", placeOf(elastic, given), true)]];
	/** The face that is used most under a peel and a shear. */
	const face = (peel, shear) => faces.map((one) => ({
		...one,
		use: interlaminarUse([one], peel, shear)
	})).reduce((a, b) => b.use > a.use ? b : a);
	if (result.reached === 0 && !result.shearFirst) {
		const { sample } = spotAt(given, result.theta, 0, j, result.x);
		const [sigma, tau] = [sample.peelHeld, Math.abs(sample.shearHeld)];
		const { tension, shear } = face(sigma, tau);
		const cold = step(pliesCold, {
			sigma,
			Z_t: tension,
			tau,
			S_13: shear
		}, 0);
		return [
			...before,
			cold,
			...marginSteps(given)
		];
	}
	if (isElastic(given, elastic)) {
		const spot = spotAt(given, result.theta, result.reached, elastic.bond, elastic.x);
		const own = {
			...given,
			result: {
				...result,
				x: elastic.x
			}
		};
		return [
			...before,
			...elasticPlies(own, spot, face),
			...marginSteps(given)
		];
	}
	const place = cappedPlace(given, j, elastic);
	if (!place) return [
		...before,
		...shearFirstSteps(given, elastic),
		...marginSteps(given)
	];
	const { tension, shear, use } = face(place.peel, place.shear);
	return [
		...before,
		yieldStep(given, j),
		peelStepOf(place),
		shearStepOf(place),
		step(pliesUse, {
			sigma: place.peel,
			Z_t: tension,
			tau: place.shear,
			S_13: shear
		}, use, result.shearFirst ? void 0 : CAPPED),
		...shearFirstSteps(given, elastic),
		...marginSteps(given)
	];
}
function elasticPlies({ result }, spot, face) {
	const factor = result.reached;
	const [sigma, tau] = [peelOf(spot.sample, factor), shearOf(spot.sample, factor)];
	const { tension, shear } = face(sigma, tau);
	const use = (Math.max(sigma, 0) / tension) ** 2 + (tau / shear) ** 2;
	return [
		elasticPeelStep(spot, factor),
		elasticShearStep(spot, factor),
		step(pliesElastic, {
			sigma,
			Z_t: tension,
			tau,
			S_13: shear
		}, use, ELASTIC)
	];
}
// src/model/working/peel-shear.ts
/** First yield under peel and shear, and fracture: elastic layered shells. */
function peelShearWorking(given) {
	const { state, result } = given;
	const j = bondIndex(state, result.part);
	const { reached, theta, x } = result;
	const spot = spotAt(given, theta, reached, j, x);
	const [sigma, tau] = [peelOf(spot.sample, reached), shearOf(spot.sample, reached)];
	const sigma_p = state.adhesives[j].peelStrength;
	const tau_p = state.bonds[j].shearYield;
	const values = {
		sigma,
		sigma_p,
		tau,
		tau_p
	};
	const use = (Math.max(sigma, 0) / sigma_p) ** 2 + (tau / tau_p) ** 2;
	return [
		...layerSteps(given, j),
		peelStrengthStep(given, j),
		yieldStep(given, j),
		pullStep(given, theta, "peel", {
			bond: j,
			x: spot.sample.x
		}),
		pullStep(given, theta, "shear", {
			bond: j,
			x: spot.sample.x
		}),
		elasticPeelStep(spot, reached),
		elasticShearStep(spot, reached),
		reached === 0 ? step(peelShearCold, values, 0) : step(peelWithShear, values, use, ELASTIC),
		...marginSteps(given)
	];
}
/** The factor is sought to 1e-12 of 1 or more, which is little of a factor far below 1. */
const cracked = (factor) => ({
	target: 1,
	tolerance: ELASTIC.tolerance + 1e-10 / Math.min(factor, 1),
	why: "root of the mix, sought to 1e-12 of a factor of 1"
});
function fractureWorking(given) {
	const { state, adhesive, result } = given;
	const j = bondIndex(state, result.part);
	const { reached, theta, x } = result;
	const own = state.adhesives[j];
	const spot = spotAt(given, theta, reached, j, x);
	const stiffness = {
		gap: state.assembly.bonds[j].gap,
		normal: constrainedModulus(own),
		shear: own.shearModulus
	};
	const { modeI, modeII } = releaseRates(spot.sample, reached, stiffness);
	const { left } = state.ledgers[j];
	const entered = adhesive.fracture;
	const limit = fractureAt(entered, left);
	const use = (modeI / limit.modeI) ** limit.exponent + (modeII / limit.modeII) ** limit.exponent;
	return [
		...layerSteps(given, j),
		step(openingEnergy, {
			G_0: entered.modeI,
			K: left
		}, limit.modeI),
		step(slidingEnergy, {
			G_0: entered.modeII,
			K: left
		}, limit.modeII),
		pullStep(given, theta, "peel", {
			bond: j,
			x: spot.sample.x
		}),
		pullStep(given, theta, "shear", {
			bond: j,
			x: spot.sample.x
		}),
		elasticPeelStep(spot, reached),
		elasticShearStep(spot, reached),
		step(openingRate, {
			h: stiffness.gap,
			sigma: peelOf(spot.sample, reached),
			E_c: stiffness.normal
		}, modeI),
		step(slidingRate, {
			h: stiffness.gap,
			tau: shearOf(spot.sample, reached),
			G: stiffness.shear
		}, modeII),
		step(mixed, {
			G_I: modeI,
			G_Ic: limit.modeI,
			G_II: modeII,
			G_IIc: limit.modeII,
			m: limit.exponent
		}, use, reached === 0 ? void 0 : cracked(reached)),
		...marginSteps(given)
	];
}
// src/model/laminate/first-ply.card.ts
/** From the strain of a wall to the stress in a ply and its criterion. */
const CLT = "Classical lamination theory.";
const FLEX = "mm/N";
const FORCES = {
	N_x: ["force along at the factor", "N/mm"],
	N_theta: ["hoop force at the factor", "N/mm"],
	N_s: ["shear force at the factor", "N/mm"],
	DeltaT: ["service less stress-free temperature", "K"]
};
const LAMBDA = ["factor on the loads, as found", ""];
const WALL$1 = ["wall here", "mm"];
const forceAlong = equation({
	id: "wall-force-along",
	title: "Force along in the wall",
	statement: "Membrane stress at the factor found, over the wall, per length of its middle.",
	formula: "(sigma_T + lambda*sigma_1)*t",
	symbols: {
		sigma_T: ["stress along by temperature", "MPa"],
		lambda: LAMBDA,
		sigma_1: ["stress along per load factor", "MPa"],
		t: WALL$1
	},
	result: [
		"N_x",
		"force along at the factor",
		"N/mm"
	],
	source: CLT
});
const forceAround = equation({
	id: "wall-force-around",
	title: "Hoop force in the wall",
	statement: "Hoop force by temperature and by the load; a flat joint has none.",
	formula: "n_T + lambda*n_1*P",
	symbols: {
		n_T: ["hoop force by temperature, from the layered shells", "N/mm"],
		lambda: LAMBDA,
		n_1: ["hoop force per newton, from the layered shells", "1/mm"],
		P: ["load at this clocking", "N"]
	},
	result: [
		"N_theta",
		"hoop force at the factor",
		"N/mm"
	],
	source: "Layered shells, section 10 of the method."
});
const forceShear = equation({
	id: "wall-force-shear",
	title: "Shear force in the wall",
	statement: "Shear at the factor found, over the wall.",
	formula: "lambda*tau_1*t",
	symbols: {
		lambda: LAMBDA,
		tau_1: ["shear per load factor", "MPa"],
		t: WALL$1
	},
	result: [
		"N_s",
		"shear force at the factor",
		"N/mm"
	],
	source: CLT
});
const wallStrain = (id, title, row, result) => equation({
	id,
	title,
	statement: "From the forces in the wall, by the inverse of its stiffness A, and the free expansion of the whole stack.",
	formula: `${row[0]}*N_x + ${row[1]}*N_theta + ${row[2]}*N_s + alpha*DeltaT`,
	symbols: {
		...FORCES,
		[row[0]]: ["flexibility of the stack", FLEX],
		[row[1]]: ["flexibility of the stack", FLEX],
		[row[2]]: ["flexibility of the stack", FLEX],
		alpha: ["free expansion of the stack", "1/K"]
	},
	result: [...result, ""],
	source: CLT,
	domains: ["curved-plies", "thick-wall"]
});
const strainAlong = wallStrain("wall-strain-along", "Strain of the wall along", [
	"a_11",
	"a_12",
	"a_16"
], ["epsilon_x", "strain along"]);
const strainAround = wallStrain("wall-strain-around", "Strain of the wall around", [
	"a_12",
	"a_22",
	"a_26"
], ["epsilon_theta", "strain around"]);
const strainShear = wallStrain("wall-strain-shear", "Shear strain of the wall", [
	"a_16",
	"a_26",
	"a_66"
], ["gamma", "shear strain"]);
const curvature = equation({
	id: "wall-curvature",
	title: "Curvature of the wall",
	statement: "Bending of the wall along, over its bending stiffness: strain grows outward by it.",
	formula: "-(m_T + lambda*m_1*P)/D",
	symbols: {
		m_T: ["moment in the wall by temperature, from the layered shells", "N"],
		lambda: ["factor on the loads, as found", ""],
		m_1: ["moment in the wall per newton, from the layered shells", ""],
		P: ["load at this clocking", "N"],
		D: ["bending stiffness of the wall", "N*mm"]
	},
	result: [
		"kappa",
		"curvature along",
		"1/mm"
	],
	source: CLT,
	domains: ["thick-bond"]
});
const turned = {
	epsilon_x: ["strain along", ""],
	kappa: ["curvature along", "1/mm"],
	z: ["height of the face in the wall, outward", "mm"],
	epsilon_theta: ["strain around", ""],
	gamma: ["shear strain", ""],
	phi: ["angle of the ply from the axis", "rad"]
};
const plyStrain = (id, title, statement, formula, alpha, result) => equation({
	id,
	title,
	statement,
	formula,
	symbols: {
		...turned,
		...alpha === "" ? {} : {
			[alpha]: ["free expansion of the ply in this direction", "1/K"],
			DeltaT: FORCES.DeltaT
		}
	},
	result: [...result, ""],
	source: CLT,
	domains: ["curved-plies"]
});
const fibreStrain = plyStrain("ply-strain-1", "Strain along the fibres", "The strain of the wall at the face of the ply, seen along its fibres, less its free expansion: what makes stress.", "cos(phi)^2*(epsilon_x + z*kappa) + sin(phi)^2*epsilon_theta + sin(phi)*cos(phi)*gamma - alpha_1*DeltaT", "alpha_1", ["epsilon_1", "strain along the fibres that makes stress"]);
const crossStrain = plyStrain("ply-strain-2", "Strain across the fibres", "The same across the fibres.", "sin(phi)^2*(epsilon_x + z*kappa) + cos(phi)^2*epsilon_theta - sin(phi)*cos(phi)*gamma - alpha_2*DeltaT", "alpha_2", ["epsilon_2", "strain across the fibres that makes stress"]);
const plyShear = plyStrain("ply-strain-12", "Shear strain of the ply", "The same in shear.", "2*sin(phi)*cos(phi)*(epsilon_theta - epsilon_x - z*kappa) + (cos(phi)^2 - sin(phi)^2)*gamma", "", ["gamma_12", "shear strain of the ply"]);
const strains = {
	epsilon_1: ["strain along the fibres that makes stress", ""],
	epsilon_2: ["strain across the fibres that makes stress", ""],
	E_1: ["modulus along the fibres", "MPa"],
	E_2: ["modulus across the fibres", "MPa"],
	nu_12: ["Poisson's ratio of the ply", ""]
};
const fibreStress = equation({
	id: "ply-stress-1",
	title: "Stress along the fibres",
	statement: "Plane stress in the ply.",
	formula: "(E_1*epsilon_1 + nu_12*E_2*epsilon_2)/(1 - nu_12^2*E_2/E_1)",
	symbols: strains,
	result: [
		"sigma_1",
		"stress along the fibres",
		"MPa"
	],
	source: CLT
});
const crossStress = equation({
	id: "ply-stress-2",
	title: "Stress across the fibres",
	statement: "Plane stress in the ply.",
	formula: "E_2*(epsilon_2 + nu_12*epsilon_1)/(1 - nu_12^2*E_2/E_1)",
	symbols: strains,
	result: [
		"sigma_2",
		"stress across the fibres",
		"MPa"
	],
	source: CLT
});
const shearStress = equation({
	id: "ply-stress-12",
	title: "Shear stress in the ply",
	statement: "Plane stress in the ply.",
	formula: "G_12*gamma_12",
	symbols: {
		G_12: ["shear modulus of the ply", "MPa"],
		gamma_12: ["shear strain of the ply", ""]
	},
	result: [
		"tau_12",
		"shear stress in the ply",
		"MPa"
	],
	source: CLT
});
const tsaiWu = equation({
	id: "tsai-wu",
	title: "Tsai-Wu",
	statement: "The ply fails where the sum is 1; at the factor found it is. The interaction of the two normal stresses is minus half the root of the product of their squares, by common practice.",
	formula: "(1/X_t - 1/X_c)*sigma_1 + (1/Y_t - 1/Y_c)*sigma_2 + sigma_1^2/(X_t*X_c) + sigma_2^2/(Y_t*Y_c) + (tau_12/S)^2 - sigma_1*sigma_2/sqrt(X_t*X_c*Y_t*Y_c)",
	symbols: {
		sigma_1: ["stress along the fibres", "MPa"],
		sigma_2: ["stress across the fibres", "MPa"],
		tau_12: ["shear stress in the ply", "MPa"],
		X_t: ["tensile strength along the fibres", "MPa"],
		X_c: ["compressive strength along the fibres", "MPa"],
		Y_t: ["tensile strength across the fibres", "MPa"],
		Y_c: ["compressive strength across the fibres", "MPa"],
		S: ["shear strength of the ply", "MPa"]
	},
	result: [
		"u",
		"Tsai-Wu sum",
		""
	],
	source: "S. W. Tsai, E. M. Wu (1971).",
	domains: [
		"curved-plies",
		"thick-wall",
		"short-overlap",
		"thick-bond"
	]
});
const maximumStrain = equation({
	id: "maximum-strain",
	title: "Maximum strain",
	statement: "The ply fails where a strain is what its strength over its modulus allows; at the factor found it is.",
	formula: "abs(epsilon)*E/X",
	symbols: {
		epsilon: ["strain of the ply that decides", ""],
		E: ["modulus in this direction", "MPa"],
		X: ["strength in this direction and sign", "MPa"]
	},
	result: [
		"u",
		"use of the allowable strain",
		""
	],
	source: COMMON_PRACTICE,
	domains: [
		"curved-plies",
		"thick-wall",
		"short-overlap",
		"thick-bond"
	]
});
// src/model/margins/wall-bending.card.ts
/** Stress on a face of a wall at a factor: membrane, bending and hoop. */
const SHELLS = "Layered shells, section 10 of the method; plate theory.";
const DOMAINS$5 = [
	"short-overlap",
	"thick-wall",
	"thick-bond",
	"unbalanced-lap",
	"compressed-lap"
];
const shared = {
	lambda: ["factor on the loads, as found", ""],
	f: ["face: 1 outer or upper, -1 inner or lower", ""],
	m_T: ["moment in the wall by temperature, from the layered shells", "N"],
	m_1: ["moment in the wall per newton, from the layered shells", ""],
	P: ["load at this clocking", "N"],
	t: ["wall here", "mm"]
};
const faceAlong = equation({
	id: "face-along",
	title: "Stress along, on the face",
	statement: "Membrane stress and bending of the wall under the pull and peel of the bond.",
	formula: "sigma_T + lambda*sigma_1 - f*6*(m_T + lambda*m_1*P)/t^2",
	symbols: {
		...shared,
		sigma_T: ["stress along by temperature", "MPa"],
		sigma_1: ["stress along per load factor", "MPa"]
	},
	result: [
		"sigma_x",
		"stress along on this face",
		"MPa"
	],
	source: SHELLS,
	domains: DOMAINS$5
});
const faceAround = equation({
	id: "face-around",
	title: "Stress around, on the face",
	statement: "Hoop force over the wall, and the share of bending that is kept from contracting.",
	formula: "(n_T + lambda*n_1*P)/t - nu*f*6*(m_T + lambda*m_1*P)/t^2",
	symbols: {
		...shared,
		n_T: ["hoop force by temperature, from the layered shells", "N/mm"],
		n_1: ["hoop force per newton, from the layered shells", "1/mm"],
		nu: ["Poisson's ratio of hoop stress under bending; 0 when flat", ""]
	},
	result: [
		"sigma_theta",
		"stress around on this face",
		"MPa"
	],
	source: SHELLS,
	domains: DOMAINS$5
});
const faceShear = equation({
	id: "face-shear",
	title: "Shear in the wall",
	statement: "Shear grows with the loads alone.",
	formula: "lambda*tau_1",
	symbols: {
		lambda: shared.lambda,
		tau_1: ["shear per load factor", "MPa"]
	},
	result: [
		"tau",
		"shear in the wall",
		"MPa"
	],
	source: "Common beam theory, no source."
});
// src/model/margins/wall-strength.card.ts
/** Strength of metal walls and of laminates given as one material. */
const DOMAINS$4 = [
	"short-overlap",
	"thick-wall",
	"thick-bond",
	"outside-table"
];
const ALONG = ["stress along on this face", "MPa"];
const SHEAR = ["shear in the wall", "MPa"];
const vonMises = equation({
	id: "von-mises",
	title: "Equivalent stress",
	statement: "Von Mises, under stress along and around and shear.",
	formula: "sqrt(sigma_x^2 - sigma_x*sigma_theta + sigma_theta^2 + 3*tau^2)",
	symbols: {
		sigma_x: ALONG,
		sigma_theta: ["stress around on this face", "MPa"],
		tau: SHEAR
	},
	result: [
		"sigma_v",
		"equivalent stress",
		"MPa"
	],
	source: "R. von Mises (1913).",
	domains: DOMAINS$4
});
const metalUse = (strength) => equation({
	id: "metal-use",
	title: `Equivalent stress over ${strength} strength`,
	statement: "At the factor found, this is 1.",
	formula: "sigma_v/S",
	symbols: {
		sigma_v: ["equivalent stress", "MPa"],
		S: [`${strength} strength of the metal`, "MPa"]
	},
	result: [
		"u",
		"use of the strength",
		""
	],
	source: COMMON_PRACTICE,
	domains: DOMAINS$4
});
const laminateUse = equation({
	id: "laminate-use",
	title: "Stress along and shear together",
	statement: "Squares of the shares of strength add up to 1 at the factor found; the strength along is the tensile or the compressive one by the sign of the stress.",
	formula: "(sigma_x/X)^2 + (tau/S)^2",
	symbols: {
		sigma_x: ALONG,
		X: ["strength along, of this sign", "MPa"],
		tau: SHEAR,
		S: ["shear strength", "MPa"]
	},
	result: [
		"u",
		"use of the strength",
		""
	],
	source: COMMON_PRACTICE,
	domains: DOMAINS$4
});
// src/model/margins/wall-stress.card.ts
/** Membrane stress in a wall, per load factor. */
const BEAM = "Common beam theory, no source; shares from the shear lag.";
const SHARE = ["share of the force in this wall here, from the shear lag", ""];
const FORCE = ["axial force of the case", "N"];
const AREA = ["area of the wall here", "mm^2"];
const flatAxial = equation({
	id: "wall-axial",
	title: "Stress along the wall, by the load",
	statement: "The share of the force that this wall carries here, over its area.",
	formula: "n_F*F/A",
	symbols: {
		n_F: SHARE,
		F: FORCE,
		A: AREA
	},
	result: [
		"sigma_1",
		"stress along per load factor",
		"MPa"
	],
	source: BEAM,
	domains: ["short-overlap"]
});
const tubeAxial = equation({
	id: "wall-axial",
	title: "Stress along the wall, by the loads",
	statement: "The shares of force and moment that this wall carries here, at its outer radius.",
	formula: "n_F*F/A + n_M*M*z*cos(theta)",
	symbols: {
		n_F: SHARE,
		F: FORCE,
		A: AREA,
		n_M: ["share of the moment in this wall here, from the shear lag", ""],
		M: ["moment of the case", "N*mm"],
		z: ["outer radius over second moment here", "1/mm^3"],
		theta: ["clocking from the plane of bending", "rad"]
	},
	result: [
		"sigma_1",
		"stress along per load factor",
		"MPa"
	],
	source: BEAM,
	domains: ["short-overlap", "thick-wall"]
});
const tubeShear = equation({
	id: "wall-shear",
	title: "Shear in the wall, by the loads",
	statement: "The share of torque and transverse shear that this wall carries here; the shear of a thin tube peaks at twice its mean.",
	formula: "n_T*T*y + n_T*2*V*sin(theta)/A",
	symbols: {
		n_T: ["share of torque and shear in this wall here, from the shear lag", ""],
		T: ["torque of the case", "N*mm"],
		y: ["outer radius over polar moment here", "1/mm^3"],
		V: ["transverse shear of the case", "N"],
		theta: ["clocking from the plane of bending", "rad"],
		A: AREA
	},
	result: [
		"tau_1",
		"shear per load factor",
		"MPa"
	],
	source: BEAM,
	domains: ["short-overlap", "thick-wall"]
});
const thermalAxial = equation({
	id: "wall-thermal",
	title: "Stress along the wall, by temperature",
	statement: "What the other walls keep this one from expanding by, over its area.",
	formula: "N_T/A",
	symbols: {
		N_T: ["thermal force in this wall here, from the shear lag", "N"],
		A: AREA
	},
	result: [
		"sigma_T",
		"stress along by temperature",
		"MPa"
	],
	source: BEAM
});
// src/model/working/walls.ts
/** Metal walls and laminates given as one material, at the worse face of the place found. */
const WALL = {
	target: 1,
	tolerance: .001,
	why: "the place is closed in on by steps; the factor is that of the best of them"
};
const partsOf = ({ assembly }) => [assembly.tube, ...assembly.outers];
const partIndex = (state, name) => Math.max(0, partsOf(state).findIndex((part) => part.name === name));
const stressesOf = ({ assembly, bonds, loadCase, deltaT }) => wallStresses(assembly, bonds, loadCase.loads, deltaT);
/** Membrane stress of a wall at a place: by the loads, per factor, and by temperature. */
function membraneSteps({ state }, stresses, i, x, theta) {
	const { force, moment, torque, shear } = state.loadCase.loads;
	const behind = stresses.behind(i, x);
	const { area: A, bending: z, torsion: y } = behind;
	const stress = stresses.at(i, x)(theta);
	const n_F = behind.ofForce;
	const steps = [step(thermalAxial, {
		N_T: behind.thermalForce,
		A
	}, stress.thermal)];
	if (state.assembly.flat) return [...steps, step(flatAxial, {
		n_F,
		F: force,
		A
	}, stress.axial)];
	steps.push(step(tubeAxial, {
		n_F,
		F: force,
		A,
		n_M: behind.ofMoment,
		M: moment,
		z,
		theta
	}, stress.axial));
	if (torque !== 0 || shear !== 0) steps.push(step(tubeShear, {
		n_T: behind.ofTorque,
		T: torque,
		y,
		V: shear,
		theta,
		A
	}, stress.shear));
	return steps;
}
function wallWorking(given) {
	const { state, result } = given;
	const { x, theta, reached, mode } = result;
	const i = partIndex(state, result.part);
	const { material } = partsOf(state)[i];
	const stresses = stressesOf(state);
	const stress = stresses.at(i, x)(theta);
	const bend = wallBending(state, i);
	const factorOf = (face) => {
		if (material.kind === "isotropic") {
			const { yieldStrength, ultimateStrength } = material;
			return metalFactor(stress, mode === "metal-yield" ? yieldStrength : ultimateStrength, face);
		}
		return material.kind === "orthotropic" ? laminateFactor(stress, material, face) : 0;
	};
	const [inner, outer] = [bend(x, -1)(theta), bend(x, 1)(theta)];
	const f = factorOf(outer) < factorOf(inner) ? 1 : -1;
	const at = faceStress(stress, f === 1 ? outer : inner, reached);
	const before = [
		...membraneSteps(given, stresses, i, x, theta),
		pullStepPlain(given, theta),
		...faceSteps(given, i, f, at, stress)
	];
	const criterion = reached === 0 ? void 0 : WALL;
	if (material.kind === "isotropic") {
		const { along: sigma_x, around: sigma_theta, shear: tau } = at;
		const S = mode === "metal-yield" ? material.yieldStrength : material.ultimateStrength;
		const sigma_v = Math.sqrt(sigma_x ** 2 - sigma_x * sigma_theta + sigma_theta ** 2 + 3 * tau ** 2);
		const card = metalUse(mode === "metal-yield" ? "yield" : "ultimate");
		return [
			...before,
			step(vonMises, {
				sigma_x,
				sigma_theta,
				tau
			}, sigma_v),
			step(card, {
				sigma_v,
				S
			}, sigma_v / S, criterion),
			...marginSteps(given)
		];
	}
	const own = material;
	const X = at.along < 0 ? own.compressiveStrength : own.tensileStrength;
	const S = own.shearStrength;
	const use = (at.along / X) ** 2 + (at.shear / S) ** 2;
	return [
		...before,
		step(laminateUse, {
			sigma_x: at.along,
			X,
			tau: at.shear,
			S
		}, use, criterion),
		...marginSteps(given)
	];
}
const faceStress = (stress, face, factor) => ({
	along: stress.thermal + face.axialHeld + factor * (stress.axial + face.axialLoad),
	around: face.hoopHeld + factor * face.hoopLoad,
	shear: factor * stress.shear
});
function faceSteps({ state, result }, i, f, at, stress) {
	const { x, theta, reached: lambda } = result;
	const lines = wallLines(state, i)(x);
	const bending = {
		lambda,
		f,
		m_T: lines.momentHeld,
		m_1: lines.momentLoad,
		P: pullAt(state, theta),
		t: thicknessAt(state, i, x)
	};
	return [
		step(faceAlong, {
			...bending,
			sigma_T: stress.thermal,
			sigma_1: stress.axial
		}, at.along),
		step(faceAround, {
			...bending,
			n_T: lines.hoopHeld,
			n_1: lines.hoopLoad,
			nu: backOf(state, i)
		}, at.around),
		step(faceShear, {
			lambda,
			tau_1: stress.shear
		}, at.shear)
	];
}
// src/model/working/plies.ts
/** First ply: from the forces in the wall to the ply that fails first. */
const PLY = {
	target: 1,
	tolerance: 1e-8,
	why: "positive root of the criterion"
};
function firstPlyWorking(given) {
	const { state, result } = given;
	const { x, theta, reached: lambda } = result;
	const i = partIndex(state, result.part);
	const material = partsOf(state)[i].material;
	const { stack } = material;
	const stresses = stressesOf(state);
	const { held, load } = wallStrainAt(state, stresses, i, material)(x)(theta);
	const { deltaT } = state;
	const failed = firstPly(stack, {
		...held,
		deltaT
	}, load);
	const byStrain = result.plies?.criterion === "maximum-strain";
	const place = byStrain ? failed.maximumStrain.place : failed.tsaiWu.place;
	const strain = addTriple(held.strain, load.strain, lambda);
	const bent = addTriple(held.curvature, load.curvature, lambda);
	const ply = plyStates(stack, {
		strain,
		curvature: bent,
		deltaT
	}).find((one) => one.ply === place.ply && one.face === place.face);
	const own = stack.plies[place.ply];
	const z = plyHeights(stack)[place.ply] + (place.face === "outer" ? 1 : -1) * own.thickness / 2;
	const criterion = lambda === 0 ? void 0 : PLY;
	return [
		...membraneSteps(given, stresses, i, x, theta),
		pullStepPlain(given, theta),
		...wallSteps$1(given, i, material, strain),
		curvatureStep(given, i, material, bent[0]),
		...plySteps(own.ply, ply, {
			epsilon_x: strain[0],
			epsilon_theta: strain[1],
			gamma: strain[2],
			kappa: bent[0],
			z,
			phi: own.angle * Math.PI / 180,
			DeltaT: deltaT
		}),
		byStrain ? strainStep(own.ply, ply.strain, failed.maximumStrain.place.component, criterion) : step(tsaiWu, {
			sigma_1: ply.stress[0],
			sigma_2: ply.stress[1],
			tau_12: ply.stress[2],
			X_t: own.ply.tensileStrength,
			X_c: own.ply.compressiveStrength,
			Y_t: own.ply.transverseTensileStrength,
			Y_c: own.ply.transverseCompressiveStrength,
			S: own.ply.shearStrength
		}, tsaiWuIndex(own.ply, ply.stress), criterion),
		...marginSteps(given)
	];
}
/** Strain of the middle of the wall from its forces at the factor. */
function wallSteps$1({ state, result }, i, { stack }, strain) {
	const { x, theta, reached } = result;
	const { a, thermalForce } = stiffnessOf$1(stack);
	const flex = invertPlane(a);
	const free = times(flex, thermalForce);
	const t = thicknessAt(state, i, x);
	const stress = stressesOf(state).at(i, x)(theta);
	const lines = wallLines(state, i)(x);
	const forces = {
		N_x: (stress.thermal + reached * stress.axial) * t,
		N_theta: lines.hoopHeld + reached * lines.hoopLoad * pullAt(state, theta),
		N_s: reached * stress.shear * t,
		DeltaT: state.deltaT
	};
	const { c11: a_11, c12: a_12, c16: a_16, c22: a_22, c26: a_26, c66: a_66 } = flex;
	const lambda = reached;
	const P = pullAt(state, theta);
	return [
		step(forceAlong, {
			sigma_T: stress.thermal,
			lambda,
			sigma_1: stress.axial,
			t
		}, forces.N_x),
		step(forceAround, {
			n_T: lines.hoopHeld,
			lambda,
			n_1: lines.hoopLoad,
			P
		}, forces.N_theta),
		...stress.shear === 0 ? [] : [step(forceShear, {
			lambda,
			tau_1: stress.shear,
			t
		}, forces.N_s)],
		step(strainAlong, {
			...forces,
			a_11,
			a_12,
			a_16,
			alpha: free[0]
		}, strain[0]),
		step(strainAround, {
			...forces,
			a_12,
			a_22,
			a_26,
			alpha: free[1]
		}, strain[1]),
		step(strainShear, {
			...forces,
			a_16,
			a_26,
			a_66,
			alpha: free[2]
		}, strain[2])
	];
}
function curvatureStep({ state, result }, i, material, bent) {
	const { x, theta, reached } = result;
	const { flat } = state.assembly;
	const size = {
		radius: 1,
		thickness: thicknessAt(state, i, x),
		flat
	};
	const { bending } = shellOf(plateProperties(material), size, "both", 0);
	const lines = wallLines(state, i)(x);
	return step(curvature, {
		m_T: lines.momentHeld,
		lambda: reached,
		m_1: lines.momentLoad,
		P: pullAt(state, theta),
		D: bending
	}, bent);
}
function plySteps(ply, { strain, stress }, turned) {
	const { DeltaT, ...wall } = turned;
	const own = {
		epsilon_1: strain[0],
		epsilon_2: strain[1],
		E_1: ply.axialModulus,
		E_2: ply.transverseModulus,
		nu_12: ply.poisson
	};
	return [
		step(fibreStrain, {
			...wall,
			DeltaT,
			alpha_1: ply.axialExpansion
		}, strain[0]),
		step(crossStrain, {
			...wall,
			DeltaT,
			alpha_2: ply.transverseExpansion
		}, strain[1]),
		step(plyShear, wall, strain[2]),
		step(fibreStress, own, stress[0]),
		step(crossStress, own, stress[1]),
		step(shearStress, {
			G_12: ply.shearModulus,
			gamma_12: strain[2]
		}, stress[2])
	];
}
function strainStep(ply, strain, component, criterion) {
	const [epsilon, E, X] = {
		"fibre tension": [
			strain[0],
			ply.axialModulus,
			ply.tensileStrength
		],
		"fibre compression": [
			strain[0],
			ply.axialModulus,
			ply.compressiveStrength
		],
		"transverse tension": [
			strain[1],
			ply.transverseModulus,
			ply.transverseTensileStrength
		],
		"transverse compression": [
			strain[1],
			ply.transverseModulus,
			ply.transverseCompressiveStrength
		],
		"in-plane shear": [
			strain[2],
			ply.shearModulus,
			ply.shearStrength
		]
	}[component];
	return step(maximumStrain, {
		epsilon,
		E,
		X
	}, maximumStrainIndex(ply, strain), criterion);
}
// src/model/margins/adhesive-modes.card.ts
const fatigueShare = equation({
	id: "cyclic-share",
	title: "Share of yield for this life",
	statement: "The adhesive's line of stress against cycles, as a share of its yield shear, never above it.",
	formula: "min(1, C*n^(-b))",
	symbols: {
		C: ["coefficient of the line", ""],
		n: ["cycles of the case", ""],
		b: ["exponent of the line", ""]
	},
	result: [
		"q",
		"share of yield allowed",
		""
	],
	source: "The line is the adhesive's own, with its source in the project; its form is Basquin's."
});
// src/model/margins/shear-factor.card.ts
/** The factor on the loads at which elastic shear reaches a limit, thermal stress held fixed. */
const YIELD = {
	formula: "tau_p",
	symbols: { tau_p: ["yield shear of the adhesive", "MPa"] },
	words: "the yield shear"
};
const FATIGUE = {
	formula: "(q*tau_p)",
	symbols: {
		tau_p: ["yield shear of the adhesive", "MPa"],
		q: ["share of yield allowed for this life", ""]
	},
	words: "what its life allows"
};
const THERMAL = ["shear by temperature at this place, elastic", "MPa"];
const LOAD$1 = ["shear per load factor at this place, elastic", "MPa"];
const AROUND = ["shear around the axis per load factor at this place, elastic", "MPa"];
const result = [
	"lambda",
	"factor on the loads of the case",
	""
];
const DOMAINS$3 = [
	"short-overlap",
	"thick-wall",
	"outside-table",
	"gap-outside-table"
];
/** Shear in one direction alone. */
const reachOneWay = ({ formula, symbols, words }) => equation({
	id: "reach-shear",
	title: "Factor at which it is reached",
	statement: `The loads grow, thermal stress stays, until the elastic shear is ${words} at its worst place.`,
	formula: `(${formula} - tau_T*tau_1/abs(tau_1))/abs(tau_1)`,
	symbols: {
		...symbols,
		tau_T: THERMAL,
		tau_1: LOAD$1
	},
	result,
	source: COMMON_PRACTICE,
	domains: DOMAINS$3
});
/**
* Both directions: the positive root of |(τT + λτ1, λτθ)| = limit.
* @param against thermal stress counts against the load: the form of the root that cancels nothing
*/
const reachBothWays = ({ formula, symbols, words }, against) => {
	const root = `sqrt((tau_T*tau_1)^2 + (tau_1^2 + tau_theta^2)*(${formula}^2 - tau_T^2))`;
	return equation({
		id: "reach-shear",
		title: "Factor at which it is reached",
		statement: `The loads grow, thermal stress stays, until the elastic shear along and around together is ${words} at its worst place: the positive root of a quadratic.`,
		formula: against ? `(${root} - tau_T*tau_1)/(tau_1^2 + tau_theta^2)` : `(${formula}^2 - tau_T^2)/(tau_T*tau_1 + ${root})`,
		symbols: {
			...symbols,
			tau_T: THERMAL,
			tau_1: LOAD$1,
			tau_theta: AROUND
		},
		result,
		source: COMMON_PRACTICE,
		domains: DOMAINS$3
	});
};
const reachedCold = ({ formula, symbols, words }) => equation({
	id: "reach-shear",
	title: "Reached by temperature alone",
	statement: `Thermal shear alone is ${words} or more: nothing is left for the load.`,
	formula: `max(0, 1 - abs(tau_T)/${formula})`,
	symbols: {
		...symbols,
		tau_T: THERMAL
	},
	result,
	source: COMMON_PRACTICE,
	domains: DOMAINS$3
});
// src/model/joint/bond-law.card.ts
/** Shear stiffness of a bond and its slips at yield and at failure. */
const GAP = ["gap", "mm"];
const MODULUS = ["shear modulus of the adhesive", "MPa"];
const LAG = "Common practice, no source: shear lag through walls whose shear falls evenly from the bonded face; checked against finite elements.";
const walls = {
	h: GAP,
	G: MODULUS,
	t_t: ["mean wall of the tube or strip", "mm"],
	G_t: ["its shear modulus through the wall", "MPa"],
	t_s: ["mean wall of the outer adherend", "mm"],
	G_s: ["its shear modulus through the wall", "MPa"]
};
const stiffness = [
	"k",
	"shear stiffness of the bond",
	"MPa/mm"
];
const stiffnessOfSingle = equation({
	id: "bond-stiffness",
	title: "Stiffness of the bond",
	statement: "Shear stress per slip between the middles of the walls: the adhesive and a third of each wall, bonded on one face, in series.",
	formula: "1/(h/G + t_t/(3*G_t) + t_s/(3*G_s))",
	symbols: walls,
	result: stiffness,
	source: LAG
});
const stiffnessOfDouble = equation({
	id: "bond-stiffness",
	title: "Stiffness of the bond",
	statement: "Shear stress per slip between the middles of the walls: the adhesive, a third of the outer adherend, bonded on one face, and a sixth of the middle one, bonded on both, in series.",
	formula: "1/(h/G + t_t/(6*G_t) + t_s/(3*G_s))",
	symbols: walls,
	result: stiffness,
	source: LAG
});
const stiffnessOfLayer = equation({
	id: "bond-stiffness",
	title: "Stiffness of the bond",
	statement: "Shear stress per slip of the adhesive alone: the project leaves the adherends' own shear out.",
	formula: "1/(h/G)",
	symbols: {
		h: GAP,
		G: MODULUS
	},
	result: stiffness,
	source: "O. Volkersen (1938)."
});
const yieldSlip = equation({
	id: "yield-slip",
	title: "Slip at yield",
	statement: "How far the walls have slipped past each other when the adhesive yields.",
	formula: "tau_p/k",
	symbols: {
		tau_p: ["yield shear of the adhesive", "MPa"],
		k: ["stiffness of the bond", "MPa/mm"]
	},
	result: [
		"s_e",
		"slip at yield",
		"mm"
	],
	source: "L. J. Hart-Smith (1973): elastic, then perfectly plastic."
});
const failureSlip = equation({
	id: "failure-slip",
	title: "Slip at failure",
	statement: "The adhesive strains by its plastic strain beyond yield at unchanged stress; the walls' own shear grows no more.",
	formula: "s_e + h*gamma_p",
	symbols: {
		s_e: ["slip at yield", "mm"],
		h: GAP,
		gamma_p: ["plastic shear strain of the adhesive", ""]
	},
	result: [
		"s_u",
		"slip at failure",
		"mm"
	],
	source: "L. J. Hart-Smith (1973): elastic, then perfectly plastic."
});
// src/model/working/bond.ts
/** Stiffness of a bond, and its slips at yield and failure. */
/** Knockdowns, yield shear and shear modulus, then the stiffness that they make. */
function bondSteps(given, j) {
	return [
		...knockdownSteps(given, j),
		propertyStep(given, j, SHEAR_YIELD, "shearYield"),
		propertyStep(given, j, SHEAR_MODULUS, "shearModulus"),
		stiffnessStep(given, j)
	];
}
function stiffnessStep({ state, settings }, j) {
	const { assembly, adhesives, bonds } = state;
	const own = {
		h: assembly.bonds[j].gap,
		G: adhesives[j].shearModulus
	};
	const { stiffness } = bonds[j];
	if (!settings.adherendShear) return step(stiffnessOfLayer, own, stiffness);
	const wall = ({ root, mouth, material }) => ({
		thickness: (root.thickness + mouth.thickness) / 2,
		modulus: axialProperties(material).throughShearModulus
	});
	const [tube, outer] = [wall(assembly.tube), wall(assembly.outers[j])];
	const values = {
		...own,
		t_t: tube.thickness,
		G_t: tube.modulus,
		t_s: outer.thickness,
		G_s: outer.modulus
	};
	return step(bonds.length === 2 ? stiffnessOfDouble : stiffnessOfSingle, values, stiffness);
}
function slipSteps(given, j) {
	const { assembly, adhesives, bonds } = given.state;
	const bond = bonds[j];
	const atYield = slipAtYield(bond);
	return [
		propertyStep(given, j, PLASTIC_STRAIN, "plasticStrain"),
		step(yieldSlip, {
			tau_p: bond.shearYield,
			k: bond.stiffness
		}, atYield),
		step(failureSlip, {
			s_e: atYield,
			h: assembly.bonds[j].gap,
			gamma_p: adhesives[j].plasticStrain
		}, bond.slipAtFailure)
	];
}
// src/model/shear-lag/one-bond.card.ts
/** Elastic shear of one bond between uniform walls, at its ends. */
const VOLKERSEN = "O. Volkersen (1938).";
const DOMAINS$2 = ["short-overlap", "thick-wall"];
const lap = {
	a: ["lever of the bond, 1 at the reference radius", ""],
	k: ["stiffness of the bond", "MPa/mm"],
	K_t: ["stiffness of the tube or strip", "N"],
	K_s: ["stiffness of the outer adherend", "N"]
};
const WIDTH = ["width of the bond", "mm"];
const OMEGA$1 = ["decay rate of the shear", "1/mm"];
const LENGTH$1 = ["overlap", "mm"];
/** Symbols of the other direction carry its name. */
const mark = (way) => way === "along" ? "" : "_theta";
const id = (name, way) => way === "along" ? name : `${name}-around`;
const decay = (way) => equation({
	id: id("decay-rate", way),
	title: `Decay of the shear ${way} the axis`,
	statement: "How fast the shear falls from an end of the overlap towards its middle.",
	formula: "a*sqrt(c*k*(1/K_t + 1/K_s))",
	symbols: {
		...lap,
		c: WIDTH
	},
	result: [
		"omega",
		"decay rate of the shear",
		"1/mm"
	],
	source: VOLKERSEN,
	domains: DOMAINS$2
});
/** At the mouth the odd part adds, at the root it takes away. */
const loadShear = (way, end) => equation({
	id: id("end-shear", way),
	title: `Shear ${way} the axis at the ${end}, by the load`,
	statement: "Shear is highest at the ends of the overlap: a part that both ends share, and a part by which the end of the stiffer wall has less.",
	formula: `P*omega/(2*a*c*tanh(omega*L/2)) ${end === "mouth" ? "+" : "-"} k*a*P*(1/K_t - 1/K_s)*tanh(omega*L/2)/(2*omega)`,
	symbols: {
		P: ["load at this clocking", "N"],
		omega: OMEGA$1,
		c: WIDTH,
		L: LENGTH$1,
		...lap
	},
	result: [
		`tau_1${mark(way)}`,
		"elastic shear per load factor",
		"MPa"
	],
	source: VOLKERSEN,
	domains: DOMAINS$2
});
const mismatch = equation({
	id: "thermal-mismatch",
	title: "Mismatch of expansion",
	statement: "How much more the tube would expand than the outer adherend, were it free.",
	formula: "(alpha_t - alpha_s)*DeltaT",
	symbols: {
		alpha_t: ["expansion of the tube or strip", "1/K"],
		alpha_s: ["expansion of the outer adherend", "1/K"],
		DeltaT: ["service less stress-free temperature", "K"]
	},
	result: [
		"epsilon_T",
		"mismatch strain",
		""
	],
	source: "L. J. Hart-Smith (1973), thermal mismatch."
});
const thermalShear = (end) => equation({
	id: "thermal-shear",
	title: `Shear at the ${end}, by temperature`,
	statement: "Temperature shears both ends alike, in opposite directions.",
	formula: `${end === "mouth" ? "" : "-"}k*epsilon_T*tanh(omega*L/2)/omega`,
	symbols: {
		k: lap.k,
		epsilon_T: ["mismatch strain", ""],
		omega: OMEGA$1,
		L: LENGTH$1
	},
	result: [
		"tau_T",
		"elastic shear by temperature, held fixed",
		"MPa"
	],
	source: "O. Volkersen (1938), with a thermal mismatch.",
	domains: DOMAINS$2
});
// src/model/working/lap.ts
/** The one-dimensional lap at a clocking: loads, walls, and elastic shear at a place. */
const wayOf = (problem, q) => q === problem.axial ? "along" : "around";
/** The load of each channel that has one. */
function loadSteps({ state }, problem, theta) {
	const { assembly, loadCase } = state;
	const { force, moment, torque, shear } = loadCase.loads;
	const r = assembly.referenceRadius;
	return problem.channels.flatMap(({ load }, q) => {
		if (load === 0) return [];
		if (wayOf(problem, q) === "around") return [step(hoopLoad, {
			T: torque,
			r,
			V: shear,
			theta
		}, load)];
		if (assembly.flat) return [step(flatLoad, { F: force }, load)];
		return [step(axialLoad, {
			F: force,
			M: moment,
			theta,
			r
		}, load)];
	});
}
/** True where a closed form of one bond between uniform walls stands behind a channel. */
const isClosed = (problem, channel) => problem.bonds.length === 1 && !isTapered(channel);
/** Stiffness of the two walls of a channel of one bond, and the decay rate that they make. */
function wallSteps({ state }, problem, q, theta) {
	const { assembly, loadCase } = state;
	const channel = problem.channels[q];
	const bond = problem.bonds[0];
	const way = wayOf(problem, q);
	const r = assembly.referenceRadius;
	const weights = loadWeights(assembly, loadCase.loads, theta);
	const stiffness = (letter, part, own) => {
		const { modulus, shearModulus } = axialProperties(part.material);
		const { area, secondMoment, polarMoment } = part.root;
		if (way === "around") return step(twistedWall(letter, part.name), {
			G: shearModulus,
			J: polarMoment,
			r
		}, own);
		if (weights.moment === 0) return step(pulledWall(letter, part.name), {
			E: modulus,
			A: area
		}, own);
		return step(bentWall(letter, part.name), {
			E: modulus,
			w_F: weights.force,
			w_M: weights.moment,
			A: area,
			I: secondMoment,
			r
		}, own);
	};
	const { tube, outers, levers } = channel;
	const K_t = tube.stiffness;
	const K_s = outers[0].stiffness;
	return [
		stiffness("t", assembly.tube, K_t),
		stiffness("s", assembly.outers[0], K_s),
		step(decay(way), {
			a: levers[0],
			c: bond.width,
			k: bond.stiffness,
			K_t,
			K_s
		}, decayRate(channel, bond))
	];
}
function mismatchStep({ state }, channel) {
	const { assembly, deltaT } = state;
	const of = (part) => axialProperties(part.material).expansion;
	return step(mismatch, {
		alpha_t: of(assembly.tube),
		alpha_s: of(assembly.outers[0]),
		DeltaT: deltaT
	}, thermalMismatch(channel, 0));
}
/** Elastic shear at an end or between, by temperature and per load factor, and how it came about. */
function elasticSteps(given, problem, j, x, theta) {
	const { length, bonds, channels } = problem;
	const steps = loadSteps(given, problem, theta);
	const shear = {
		thermal: 0,
		along: 0,
		around: 0
	};
	channels.forEach((channel, q) => {
		const solution = solveElastic(channel, bonds, length);
		const way = wayOf(problem, q);
		shear[way] = solution.mechanical.shear(j, x);
		if (way === "along") shear.thermal = solution.thermal.shear(j, x);
		const end = x === 0 ? "root" : x === length ? "mouth" : null;
		if (!isClosed(problem, channel) || !end) {
			const force = (i) => i < bonds.length ? solution.mechanical.outerForce(i, 0) : 0;
			if (channel.load !== 0) steps.push(step(equilibrium, {
				N_1: force(0),
				N_2: force(1)
			}, channel.load));
			return;
		}
		const bond = bonds[0];
		const omega = decayRate(channel, bond);
		steps.push(...wallSteps(given, problem, q, theta));
		const { tube, outers, levers } = channel;
		if (channel.load !== 0) {
			const values = {
				P: channel.load,
				omega,
				a: levers[0],
				c: bond.width,
				L: length,
				k: bond.stiffness,
				K_t: tube.stiffness,
				K_s: outers[0].stiffness
			};
			steps.push(step(loadShear(way, end), values, shear[way]));
		}
		const epsilon = thermalMismatch(channel, 0);
		if (way === "along" && epsilon !== 0) {
			steps.push(mismatchStep(given, channel));
			const values = {
				k: bond.stiffness,
				epsilon_T: epsilon,
				omega,
				L: length
			};
			steps.push(step(thermalShear(end), values, shear.thermal));
		}
	});
	return {
		steps,
		shear
	};
}
// src/model/working/shear.ts
/** First yield and cyclic shear: the elastic shear lag up to a limit. */
function yieldWorking(given) {
	return reachWorking(given, YIELD, [], {});
}
function cyclicWorking(given) {
	const { state, adhesive } = given;
	const { coefficient, exponent } = adhesive.fatigue;
	const cycles = state.loadCase.cycles;
	const q = cyclicShare(coefficient, exponent, cycles);
	const share = step(fatigueShare, {
		C: coefficient,
		n: cycles,
		b: exponent
	}, q);
	return reachWorking(given, FATIGUE, [share], { q });
}
function reachWorking(given, limit, before, more) {
	const { state, result } = given;
	const j = bondIndex(state, result.part);
	const { steps, shear } = elasticSteps(given, state.at(result.theta), j, result.x, result.theta);
	const values = {
		...more,
		tau_p: state.bonds[j].shearYield,
		tau_T: shear.thermal
	};
	return [
		...bondSteps(given, j),
		...before,
		...steps,
		reachStep(limit, values, shear, result.reached),
		...marginSteps(given)
	];
}
function reachStep(limit, values, { thermal, along, around }, reached) {
	if (reached === 0) return step(reachedCold(limit), values, reached);
	if (along !== 0 && around !== 0) {
		const both = reachBothWays(limit, thermal * along <= 0);
		return step(both, {
			...values,
			tau_1: along,
			tau_theta: around
		}, reached);
	}
	if (thermal !== 0 && along === 0) return step(reachBothWays(limit, true), {
		...values,
		tau_1: 0,
		tau_theta: around
	}, reached);
	return step(reachOneWay(limit), {
		...values,
		tau_1: along === 0 ? around : along
	}, reached);
}
// src/model/margins/bond-strength.card.ts
/** What the bond carries at most, and its durability trough. */
const HART_SMITH$2 = "L. J. Hart-Smith (1973), elastic-plastic adhesive.";
const slipUse = equation({
	id: "slip-use",
	title: "Slip over slip at failure",
	statement: "The bond fails where an end has slipped as far as the adhesive can: at the factor found, this is 1.",
	formula: "s/s_u",
	symbols: {
		s: ["slip at the end", "mm"],
		s_u: ["slip at failure", "mm"]
	},
	result: [
		"u",
		"use of the slip at failure",
		""
	],
	source: HART_SMITH$2,
	domains: [
		"short-overlap",
		"thick-wall",
		"outside-table",
		"gap-outside-table",
		"whole-bond-flows"
	]
});
const resultantSlip = equation({
	id: "end-slip",
	title: "Slip at the end",
	statement: "Two bonds, two directions or a taper: the slips are those of the numerical solution (section 7 of the method) at the factor found, along and around together.",
	formula: "sqrt(s_x^2 + s_theta^2)",
	symbols: {
		s_x: ["slip along the axis, as solved", "mm"],
		s_theta: ["slip around the axis, as solved", "mm"]
	},
	result: [
		"s",
		"slip at the end",
		"mm"
	],
	source: HART_SMITH$2
});
const wornByTemperature = equation({
	id: "slip-use",
	title: "Failed by temperature alone",
	statement: "Temperature alone takes an end to its slip at failure: nothing is left for the load.",
	formula: "max(0, 1 - s/s_u)",
	symbols: {
		s: ["slip at the end, without load", "mm"],
		s_u: ["slip at failure", "mm"]
	},
	result: [
		"lambda",
		"factor on the loads of the case",
		""
	],
	source: HART_SMITH$2
});
const troughUse = equation({
	id: "trough-ratio",
	title: "Shear in the trough over yield",
	statement: "A bond that rests somewhere does not creep: the lowest shear along it may be a tenth of yield. At the factor found it is that, unless the bond fails before.",
	formula: "tau_min/tau_p",
	symbols: {
		tau_min: ["lowest shear along the bond, elastic-plastic, as solved", "MPa"],
		tau_p: ["yield shear of the adhesive", "MPa"]
	},
	result: [
		"r",
		"lowest shear over yield",
		""
	],
	source: "L. J. Hart-Smith (1973), a tenth of yield.",
	domains: ["short-overlap", "thick-wall"]
});
const troughOutlasts = equation({
	id: "trough-outlasts",
	title: "The trough outlasts the bond",
	statement: "Up to the load at which the bond fails its trough is below a tenth of yield: the factor is that of failure.",
	formula: "lambda_u",
	symbols: { lambda_u: ["factor at which the adhesive reaches its ultimate strain at this clocking", ""] },
	result: [
		"lambda",
		"factor on the loads of the case",
		""
	],
	source: COMMON_PRACTICE
});
const troughGone = equation({
	id: "trough-gone",
	title: "No trough even without load",
	statement: "Temperature alone keeps the whole bond above a tenth of yield: nothing is left for the load.",
	formula: "max(0, 0.1 - tau_min/tau_p)",
	symbols: {
		tau_min: ["lowest shear along the bond without load", "MPa"],
		tau_p: ["yield shear of the adhesive", "MPa"]
	},
	result: [
		"lambda",
		"factor on the loads of the case",
		""
	],
	source: "L. J. Hart-Smith (1973), a tenth of yield."
});
const carried = equation({
	id: "bond-strength",
	title: "Strength of the bond",
	statement: "What the bonds hand over when an end fails, over the load of the case at this clocking: so many times the case the bond carries.",
	formula: "(N_1 + N_2)/P",
	symbols: {
		N_1: ["force that the first bond hands over at failure, as solved", "N"],
		N_2: ["force that the second bond hands over at failure; 0 with one bond", "N"],
		P: ["load at this clocking", "N"]
	},
	result: [
		"lambda",
		"factor on the loads of the case",
		""
	],
	source: "Equilibrium."
});
// src/model/plastic/one-bond.card.ts
/** One bond with yielded ends, exact. */
const HART_SMITH$1 = "L. J. Hart-Smith (1973), elastic-plastic adhesive; unequal walls and temperature.";
const OMEGA = ["decay rate of the shear", "1/mm"];
const YIELD_SLIP = ["slip at yield", "mm"];
const DOMAINS$1 = ["short-overlap", "thick-wall"];
const endSlope = (end) => equation({
	id: "end-slope",
	title: `Slope of the slip at the ${end}`,
	statement: `At the ${end} one wall carries the whole load: the slip grows towards the end by its strain, and by the mismatch of expansion.`,
	formula: `abs(lambda*a*P/K ${end === "root" ? "-" : "+"} epsilon_T)`,
	symbols: {
		lambda: ["factor on the loads, as solved", ""],
		a: ["lever of the bond", ""],
		P: ["load at this clocking", "N"],
		K: [`stiffness of the wall that carries the load at the ${end}`, "N"],
		epsilon_T: ["mismatch strain", ""]
	},
	result: [
		"g",
		"slope of the slip at the end",
		""
	],
	source: HART_SMITH$1,
	domains: DOMAINS$1
});
const endSlip = equation({
	id: "end-slip",
	title: "Slip at the end",
	statement: "Over the yielded length the shear is constant, so the slip is a parabola: from slip at yield at its front to its slope at the end.",
	formula: "s_e + g*c_p - omega^2*s_e*c_p^2/2",
	symbols: {
		s_e: YIELD_SLIP,
		g: ["slope of the slip at the end", ""],
		c_p: ["yielded length at this end, as solved", "mm"],
		omega: OMEGA
	},
	result: [
		"s",
		"slip at the end",
		"mm"
	],
	source: HART_SMITH$1,
	domains: DOMAINS$1
});
const flow = equation({
	id: "flow-load",
	title: "The whole bond flows",
	statement: "Before an end slips as far as the adhesive can, the whole bond has yielded: it carries its area times its yield shear and no more.",
	formula: "a*c*tau_p*L/abs(P)",
	symbols: {
		a: ["lever of the bond", ""],
		c: ["width of the bond", "mm"],
		tau_p: ["yield shear of the adhesive", "MPa"],
		L: ["overlap", "mm"],
		P: ["load at this clocking", "N"]
	},
	result: [
		"lambda",
		"factor on the loads of the case",
		""
	],
	source: "Equilibrium.",
	domains: ["whole-bond-flows"]
});
const troughShear = equation({
	id: "trough-shear",
	title: "Lowest shear in the trough",
	statement: "Between two yielded ends an elastic trough is left; the shear falls from yield at both its ends to its middle.",
	formula: "2*tau_p/(exp(omega*l/2) + exp(-omega*l/2))",
	symbols: {
		tau_p: ["yield shear of the adhesive", "MPa"],
		omega: OMEGA,
		l: ["length of the elastic trough, as solved", "mm"]
	},
	result: [
		"tau_min",
		"lowest shear along the bond",
		"MPa"
	],
	source: HART_SMITH$1,
	domains: DOMAINS$1
});
// src/model/working/strength.ts
/** Strength of the bond by adhesive ultimate strain, and its durability trough. */
/** Searches that end on the numerical solution stop near this in the slip or the factor. */
const CHAIN = {
	tolerance: 1e-6,
	why: "Newton iteration of the numerical solution"
};
const EXACT = {
	tolerance: 1e-9,
	why: "root of the exact solution"
};
const TROUGH = {
	tolerance: .002,
	why: "the factor is sought to 1e-5, near which the trough closes fast"
};
function strainWorking(given) {
	return [...strengthSteps(given, given.result.theta), ...marginSteps(given)];
}
/** The strength at a clocking: the last card but the margin's is its criterion, or the flow load. */
function strengthSteps(given, theta) {
	const { state } = given;
	const problem = state.at(theta);
	const strength = strengthAt(problem);
	if (!strength) return [];
	const j = strength.bond;
	return [
		...bondSteps(given, j),
		...slipSteps(given, j),
		...loadSteps(given, problem, theta),
		...failureSteps(given, problem, strength, theta)
	];
}
const yieldAt = (problem) => shearFactor(problem, problem.bonds.map(({ shearYield }) => shearYield));
const strengthAt = (problem) => bondStrength(problem, yieldAt(problem));
function failureSteps(given, problem, strength, theta) {
	const j = strength.bond;
	const bond = problem.bonds[j];
	if (strength.factor === 0) return [wornStep(problem, strength)];
	if (!hasExactPlastic(problem)) return chainSteps(problem, strength);
	const channel = problem.channels[0];
	const walls = wallSteps(given, problem, 0, theta);
	if (strength.wholeBondFlows) return [...walls, flowStep(problem, channel, bond, strength.factor)];
	const { factor, end } = strength;
	const solved = solvePlastic({
		...channel,
		load: channel.load * factor
	}, bond, problem.length);
	const slip = Math.abs(end === "root" ? solved.slipAtRoot : solved.slipAtMouth);
	return [
		...walls,
		...endSteps(given, problem, solved, end, factor),
		step(slipUse, {
			s: slip,
			s_u: bond.slipAtFailure
		}, slip / bond.slipAtFailure, {
			target: 1,
			...EXACT
		}),
		carriedStep(problem, plasticState(problem, factor), factor)
	];
}
/** Equilibrium of the state at failure, in the direction that carries more. */
function carriedStep(problem, lap, factor) {
	const loads = problem.channels.map(({ load }) => Math.abs(load));
	const q = loads.indexOf(Math.max(...loads));
	const of = (j) => j < problem.bonds.length ? lap.outerForce(q, j, 0) : 0;
	const values = {
		N_1: of(0),
		N_2: of(1),
		P: problem.channels[q].load
	};
	return nearly(step(carried, values, factor), {
		relative: 1e-6,
		why: "equilibrium of the numerical solution at failure"
	});
}
const flowStep = (problem, channel, bond, factor) => step(flow, {
	a: channel.levers[0],
	c: bond.width,
	tau_p: bond.shearYield,
	L: problem.length,
	P: channel.load
}, factor);
/** Slope and slip of the exact solution at an end. */
function endSteps(given, problem, solved, end, factor) {
	const channel = problem.channels[0];
	const bond = problem.bonds[0];
	const atRoot = end === "root";
	const length = atRoot ? solved.plasticAtRoot : solved.plasticAtMouth;
	const slip = Math.abs(atRoot ? solved.slipAtRoot : solved.slipAtMouth);
	if (length === 0) return [];
	const epsilon = thermalMismatch(channel, 0);
	const K = atRoot ? channel.outers[0].stiffness : channel.tube.stiffness;
	const strain = factor * channel.levers[0] * channel.load / K;
	const g = Math.abs(atRoot ? strain - epsilon : strain + epsilon);
	return [
		...problem.axial === 0 ? [mismatchStep(given, channel)] : [],
		step(endSlope(end), {
			lambda: factor,
			a: channel.levers[0],
			P: channel.load,
			K,
			epsilon_T: epsilon
		}, g),
		step(endSlip, {
			s_e: slipAtYield(bond),
			g,
			c_p: length,
			omega: decayRate(channel, bond)
		}, slip)
	];
}
function slipOf(problem, state, j, end) {
	const x = end === "root" ? 0 : problem.length;
	const of = (q) => q < 0 ? 0 : state.slip(q, j, x);
	const [along, around] = [of(problem.axial), of(problem.hoop)];
	return {
		along,
		around,
		size: Math.hypot(along, around)
	};
}
function wornStep(problem, { bond, end }) {
	const { size } = slipOf(problem, plasticState(problem, 0), bond, end);
	return step(wornByTemperature, {
		s: size,
		s_u: problem.bonds[bond].slipAtFailure
	}, 0);
}
function chainSteps(problem, { bond: j, end, failed, factor }) {
	const lap = failed ?? plasticState(problem, factor);
	const { along, around, size } = slipOf(problem, lap, j, end);
	const limit = problem.bonds[j].slipAtFailure;
	return [
		step(resultantSlip, {
			s_x: along,
			s_theta: around
		}, size),
		step(slipUse, {
			s: size,
			s_u: limit
		}, size / limit, {
			target: 1,
			...CHAIN
		}),
		carriedStep(problem, lap, factor)
	];
}
function troughWorking(given) {
	const { state, result } = given;
	const problem = state.at(result.theta);
	const strength = strengthAt(problem);
	const { reached } = result;
	if (Math.abs(reached - strength.factor) <= 1e-9 * reached) {
		const outlasts = step(troughOutlasts, { lambda_u: strength.factor }, reached);
		return [
			...strengthSteps(given, result.theta),
			outlasts,
			...marginSteps(given)
		];
	}
	return [
		...bondSteps(given, strength.bond),
		...loadSteps(given, problem, result.theta),
		...troughSteps(given, problem, reached, result.theta),
		...marginSteps(given)
	];
}
/** Lowest shear of the bond that keeps the least of its trough, and its yield shear. */
function troughOf(problem, lap) {
	const [worst] = problem.bonds.map(({ shearYield }, j) => {
		const ratio = lowestRatio(problem, lap, j);
		return {
			ratio,
			low: ratio * shearYield,
			limit: shearYield
		};
	}).sort((a, b) => b.ratio - a.ratio);
	return worst;
}
function troughSteps(given, problem, factor, theta) {
	if (factor === 0) {
		const { low, limit } = troughOf(problem, plasticState(problem, 0));
		return [step(troughGone, {
			tau_min: low,
			tau_p: limit
		}, 0)];
	}
	const criterion = {
		target: TROUGH_RATIO,
		...TROUGH
	};
	if (!hasExactPlastic(problem)) {
		const { low, limit, ratio } = troughOf(problem, factor <= yieldAt(problem).factor ? elasticState(problem, factor) : plasticState(problem, factor));
		return [step(troughUse, {
			tau_min: low,
			tau_p: limit
		}, ratio, criterion)];
	}
	const [channel, bond] = [problem.channels[0], problem.bonds[0]];
	const solved = solvePlastic({
		...channel,
		load: channel.load * factor
	}, bond, problem.length);
	const low = solved.lowestShear;
	const steps = [];
	const sameWay = solved.slipAtRoot * solved.slipAtMouth > 0;
	if (solved.plasticAtRoot > 0 && solved.plasticAtMouth > 0 && sameWay) {
		const l = problem.length - solved.plasticAtRoot - solved.plasticAtMouth;
		const values = {
			tau_p: bond.shearYield,
			omega: decayRate(channel, bond),
			l
		};
		steps.push(...wallSteps(given, problem, 0, theta), step(troughShear, values, low));
	}
	const ratio = low / bond.shearYield;
	return [...steps, step(troughUse, {
		tau_min: low,
		tau_p: bond.shearYield
	}, ratio, criterion)];
}
// src/model/working/modes.ts
const workings = {
	"adhesive-yield": yieldWorking,
	"adhesive-strain": strainWorking,
	"adhesive-peel": peelWorking,
	"peel-shear": peelShearWorking,
	interlaminar: pliesWorking,
	"first-ply": firstPlyWorking,
	fracture: fractureWorking,
	"durability-trough": troughWorking,
	"cyclic-shear": cyclicWorking,
	"metal-yield": wallWorking,
	"metal-ultimate": wallWorking,
	"laminate-strength": wallWorking
};
const marginWorking = (given) => workings[given.result.mode](given);
// src/main/handlers/explain-cards.ts
const DIGITS = 6;
/** Six significant digits, as a formula can hold them. */
function written(value) {
	return String(Number(value.toPrecision(DIGITS))).replace("e+", "e");
}
/** A formula with its values put in; what is negative stands in brackets. */
function fill(formula, values) {
	return formula.replace(/[A-Za-z_]\w*/g, (name, at) => {
		const value = Object.hasOwn(values, name) ? values[name] : void 0;
		if (value === void 0 || /\d$/.test(formula.slice(0, at))) return name;
		return value < 0 ? `(${written(value)})` : written(value);
	});
}
const valuesOf = ({ symbols }, values) => symbols.map(({ symbol, label, unit }) => ({
	symbol,
	label,
	unit,
	value: values[symbol]
}));
/** The last card, the figure's own, carries every domain; the others those that they rest on. */
function cardsOf(steps, domains) {
	return steps.map(({ equation, values, result }, i) => {
		const { id, title, statement, formula, source } = equation;
		const own = i === steps.length - 1 ? domains : domains.filter(({ code }) => equation.domains.includes(code));
		return {
			id,
			title,
			statement,
			formula: `${equation.result.symbol} = ${formula}`,
			filled: `${equation.result.symbol} = ${fill(formula, values)}`,
			values: valuesOf(equation, values),
			result: {
				...equation.result,
				value: result
			},
			source,
			domain: own.map(({ text, inside }) => ({
				text,
				inside
			}))
		};
	});
}
// src/model/curves/stress-curves.card.ts
/** Figures of the drawn state. */
const shearOfSlip = equation({
	id: "peak-shear",
	title: "Largest shear in the bond",
	statement: "Shear follows the slip up to yield and stays there. The slip is that of the solved state at this place.",
	formula: "min(tau_p, k*s)",
	symbols: {
		tau_p: ["yield shear of the adhesive", "MPa"],
		k: ["stiffness of the bond", "MPa/mm"],
		s: ["slip at this place, as solved", "mm"]
	},
	result: [
		"tau",
		"largest shear in the bond",
		"MPa"
	],
	source: "O. Volkersen (1938); L. J. Hart-Smith (1973) past yield.",
	domains: [
		"short-overlap",
		"thick-wall",
		"outside-table",
		"gap-outside-table"
	]
});
const linearShear = equation({
	id: "elastic-superposition",
	title: "Elastic shear at the factor",
	statement: "Below yield, shear is what temperature leaves and what the loads add.",
	formula: "sqrt((tau_T + lambda*tau_1)^2 + (lambda*tau_theta)^2)",
	symbols: {
		tau_T: ["shear by temperature", "MPa"],
		lambda: ["factor on the loads of the case", ""],
		tau_1: ["shear along per load factor", "MPa"],
		tau_theta: ["shear around per load factor", "MPa"]
	},
	result: [
		"tau",
		"elastic shear",
		"MPa"
	],
	source: "O. Volkersen (1938).",
	domains: ["short-overlap", "thick-wall"]
});
// src/model/working/drawn.ts
/** Figures of the drawn state: largest shear, largest peel, strength of the bond at the clocking. */
/** @param j bond */
function peakShearWorking(given, drawn, j) {
	const { state, settings } = given;
	const { theta, loadFactor } = drawn;
	const curves = stressCurves(state, theta, loadFactor, settings.adherendShear, drawn.stations);
	const { peak, shearYield } = curves.bonds[j];
	const problem = state.at(theta);
	const atYield = yieldAt(problem);
	const strength = strengthAt(problem);
	const below = strength?.wholeBondFlows ? 1 - 1e-6 : 1;
	const factor = Math.min(loadFactor, curves.capacity * below);
	const lap = stateToDraw(problem, factor, atYield.factor, curves.carried ? null : strength);
	const before = bondSteps(given, j);
	if (!(strength?.failed && !curves.carried) && isDrawnElastic(factor, atYield.factor) && !(factor === atYield.factor && hasExactPlastic(problem))) {
		const { steps, shear } = elasticSteps(given, problem, j, peak.x, theta);
		const values = {
			tau_T: shear.thermal,
			lambda: factor,
			tau_1: shear.along,
			tau_theta: shear.around
		};
		const last = step(linearShear, values, Math.abs(peak.value));
		return {
			steps: [
				...before,
				...steps,
				last
			],
			x: peak.x
		};
	}
	const slip = Math.hypot(...problem.channels.map((_c, q) => lap.slip(q, j, peak.x)));
	const values = {
		tau_p: shearYield,
		k: state.bonds[j].stiffness,
		s: slip
	};
	return {
		steps: [
			...before,
			...loadSteps(given, problem, theta),
			step(shearOfSlip, values, Math.abs(peak.value))
		],
		x: peak.x
	};
}
/** Largest peel of the curve that counts: the capped one where the bond yields. */
function peakPeelWorking(given, { theta, loadFactor }, j) {
	const { state } = given;
	const { layered, loadCase, adhesives } = state;
	const { dense: x, elastic, capped, place } = countedPeel(state, theta, loadFactor);
	const { peel } = capped ? partOf(capped.solution, layered.order, x, capped.load, 1).bonds[j] : elastic.bonds[j];
	let at = 0;
	peel.forEach((value, i) => {
		if (value > peel[at]) at = i;
	});
	const counted = capped?.solution ?? layered.solution(loadFactor * loadCase.loads.force);
	const of = (newtons, share) => counted.at(x[at], newtons, share).stresses.peel[j];
	const spot = {
		bond: j,
		x: x[at]
	};
	const pull = capped ? pullAt(state, theta, boundedCover(state, "peel", place.bond, place.x)) : pullAt(state, theta, coverAt(state, "peel", j, spot.x));
	const sigma = peel[at];
	const strength = adhesives[j].peelStrength;
	return {
		steps: [
			...layerSteps(given, j),
			...estimateSteps(given, j),
			pullStep(given, theta, "peel", capped ? place : spot, capped !== null),
			...strength === void 0 ? [] : [peelStrengthStep(given, j), step(shareOfStrength, {
				sigma,
				sigma_p: strength
			}, sigma / strength)],
			step(drawnPeel(capped !== null), {
				sigma_f: of(0, 1),
				lambda: loadFactor,
				P: pull,
				sigma_1: of(1, 0)
			}, sigma)
		],
		x: x[at]
	};
}
// src/model/flat-lap/edge-moment.card.ts
/**
* Edge moment of a flat single lap, by both methods, at one end. (P + |P|)/2 is P in tension and 0 in
* compression; a formula reader's max(P, 0) may take a tiny load for zero and give its negative back.
*/
const LOAD = ["load per width", "N/mm"];
const LENGTH = ["overlap", "mm"];
const DOMAINS = ["unbalanced-lap", "compressed-lap"];
const GOLAND = "M. Goland, E. Reissner (1944), from memory.";
const HART_SMITH = "L. J. Hart-Smith (1973), from memory.";
const lever = equation({
	id: "edge-lever",
	title: "Lever of the load",
	statement: "The load comes in along one adherend and leaves along the other: from middle to middle.",
	formula: "(t_1 + t_2)/2 + h",
	symbols: {
		t_1: ["strip", "mm"],
		t_2: ["plate at the root", "mm"],
		h: ["gap", "mm"]
	},
	result: [
		"e",
		"lever of the load",
		"mm"
	],
	source: "Geometry."
});
const solidPair = equation({
	id: "edge-pair",
	title: "Bending stiffness of the overlap as one plate",
	statement: "Both adherends bend together, without the adhesive between them.",
	formula: "D_1 + D_2 + ((t_1 + t_2)/2)^2*A_1*A_2/(A_1 + A_2)",
	symbols: {
		D_1: ["bending stiffness of the plate per width", "N*mm"],
		D_2: ["bending stiffness of the strip per width", "N*mm"],
		t_1: ["plate", "mm"],
		t_2: ["strip", "mm"],
		A_1: ["stiffness along of the plate per width", "N/mm"],
		A_2: ["stiffness along of the strip per width", "N/mm"]
	},
	result: [
		"D_12",
		"bending stiffness of the overlap",
		"N*mm"
	],
	source: GOLAND,
	domains: DOMAINS
});
const PAIR = ["bending stiffness of the overlap", "N*mm"];
const GR_RESULT = [
	"k_GR",
	"edge moment factor by Goland and Reissner",
	""
];
const alikeFactor = equation({
	id: "edge-goland-reissner",
	title: "Factor by Goland and Reissner",
	statement: "The overlap bends as one plate and turns towards the line of the load; of the moment of the undeformed shape, k is left. In compression k is that of the undeformed shape.",
	formula: "1/(1 + sqrt(D_12/D)*tanh(sqrt((P + abs(P))/2/D_12)*L/2))",
	symbols: {
		D_12: PAIR,
		D: ["bending stiffness of an adherend per width", "N*mm"],
		P: LOAD,
		L: LENGTH
	},
	result: GR_RESULT,
	source: GOLAND,
	domains: DOMAINS
});
/** i the adherend that carries the load at this end, k the other. */
const unlikeFactor = equation({
	id: "edge-goland-reissner",
	title: "Factor by Goland and Reissner, unequal adherends",
	statement: "The same assumption, an overlap that bends as one plate between long run-outs, solved for two different ends.",
	formula: "(v_i*tanh(w*L) + r_k*(v_i + 2*v_k/(exp(w*L) + exp(-w*L))))/((1 + r_i*r_k)*tanh(w*L) + r_i + r_k)",
	symbols: {
		v_i: ["share of the lever from this end's adherend to the neutral axis, twice", ""],
		v_k: ["the same of the other adherend", ""],
		w: ["root of the load over the bending stiffness of the overlap", "1/mm"],
		r_i: ["root of the overlap's bending stiffness over this adherend's", ""],
		r_k: ["the same of the other adherend", ""],
		L: LENGTH
	},
	result: GR_RESULT,
	source: `${GOLAND} Unequal adherends: own extension of it.`,
	domains: DOMAINS
});
const separateFactor = equation({
	id: "edge-hart-smith",
	title: "Factor by Hart-Smith",
	statement: "Each adherend bends by itself. With unequal adherends the factor of the stiffer one, shared between the ends by the roots of their bending stiffnesses: a cautious stand-in.",
	formula: "2*sqrt(D_i)/(sqrt(D_i) + sqrt(D_k))/(1 + sqrt((P + abs(P))/2/D_s)*L/2 + (P + abs(P))/2/D_s*L^2/24)",
	symbols: {
		D_i: ["bending stiffness of this end's adherend per width", "N*mm"],
		D_k: ["the same of the other adherend", "N*mm"],
		D_s: ["the larger of the two", "N*mm"],
		P: LOAD,
		L: LENGTH
	},
	result: [
		"k_HS",
		"edge moment factor by Hart-Smith",
		""
	],
	source: HART_SMITH,
	domains: DOMAINS
});
/** The last card of the edge moment, in the factor of the chosen method. */
const moment = (chosen, end) => {
	const k = chosen === "goland-reissner" ? "k_GR" : "k_HS";
	return equation({
		id: "edge-moment",
		title: `Edge moment at the ${end}`,
		statement: "By the method that the project chooses; it enters the layered shells as the joint's load.",
		formula: `${k}*P*e/2`,
		symbols: {
			[k]: ["factor by the chosen method", ""],
			P: LOAD,
			e: ["lever of the load", "mm"]
		},
		result: [
			"M",
			`moment at the ${end} per width`,
			"N"
		],
		source: chosen === "goland-reissner" ? GOLAND : HART_SMITH,
		domains: DOMAINS
	});
};
// src/model/working/edge.ts
/** Edge moment of a flat single lap at both ends, by both methods. */
/** @param factor on the loads of the case */
function edgeMomentWorking({ state, settings }, factor) {
	const { tube, outers, bonds, overlap } = state.assembly;
	const { gap, width } = bonds[0];
	const force = state.loadCase.loads.force * factor;
	const both = flatEdgeMoments(state.assembly, force);
	const root = adherendOf(outers[0], width);
	const mouth = adherendOf(tube, width);
	const D_12 = pairStiffness({
		root,
		mouth
	});
	const P = force / width;
	const chosen = settings.edgeMoment ?? "goland-reissner";
	const alike = root.membraneStiffness === mouth.membraneStiffness && root.bendingStiffness === mouth.bendingStiffness;
	const factorsAt = (end) => {
		const [own, other] = end === "root" ? [root, mouth] : [mouth, root];
		const { golandReissner, hartSmith } = both;
		const stiffer = Math.max(own.bendingStiffness, other.bendingStiffness);
		const share = own.membraneStiffness / (own.membraneStiffness + other.membraneStiffness);
		return [
			alike ? step(alikeFactor, {
				D_12,
				D: own.bendingStiffness,
				P,
				L: overlap
			}, golandReissner[end].factor) : step(unlikeFactor, {
				v_i: 2 * (1 - share),
				v_k: 2 * share,
				w: Math.sqrt(Math.max(P, 0) / D_12),
				r_i: Math.sqrt(D_12 / own.bendingStiffness),
				r_k: Math.sqrt(D_12 / other.bendingStiffness),
				L: overlap
			}, golandReissner[end].factor),
			step(separateFactor, {
				D_i: own.bendingStiffness,
				D_k: other.bendingStiffness,
				D_s: stiffer,
				P,
				L: overlap
			}, hartSmith[end].factor),
			momentStep(chosen, end, P, both)
		];
	};
	return [
		step(lever, {
			t_1: mouth.thickness,
			t_2: root.thickness,
			h: gap
		}, both.lever),
		step(solidPair, {
			D_1: root.bendingStiffness,
			D_2: mouth.bendingStiffness,
			t_1: root.thickness,
			t_2: mouth.thickness,
			A_1: root.membraneStiffness,
			A_2: mouth.membraneStiffness
		}, D_12),
		...factorsAt("root"),
		...factorsAt("mouth")
	];
}
function momentStep(chosen, end, P, { golandReissner, hartSmith, lever: e }) {
	const own = (chosen === "hart-smith" ? hartSmith : golandReissner)[end];
	const k = chosen === "hart-smith" ? "k_HS" : "k_GR";
	return step(moment(chosen, end), {
		[k]: own.factor,
		P,
		e
	}, own.moment);
}
function adherendOf(part, width) {
	const { thickness } = part.root;
	const size = {
		radius: width,
		thickness,
		flat: true
	};
	const { cxx, bending } = shellOf(plateProperties(part.material), size, "both", 0);
	return {
		thickness,
		membraneStiffness: cxx,
		bendingStiffness: bending
	};
}
// src/model/sweep/overlap-sweep.card.ts
/** Strength against overlap, and the plateau. */
const ratio = (which, where) => equation({
	id: `strength-${which}`,
	title: `Strength of the bond at ${where}`,
	statement: "Factor at which the adhesive reaches its ultimate strain over the factor asked for, the worst over cases and gaps; the joint as it is, but for its overlap.",
	formula: "lambda/asked",
	symbols: {
		lambda: ["factor on the loads at which it is reached, as solved", ""],
		asked: ["factor asked for", ""]
	},
	result: [
		which === "long" ? "R_long" : "R",
		"strength over the load asked for",
		""
	],
	source: COMMON_PRACTICE,
	domains: ["outside-table", "gap-outside-table"]
});
const plateauShare = equation({
	id: "plateau",
	title: "Plateau",
	statement: "The plateau is the shortest overlap whose bond has 98 % of the strength of a very long one: past it more overlap buys under 2 %.",
	formula: "R/R_long",
	symbols: {
		R: ["strength at the plateau, over the load asked for", ""],
		R_long: ["strength at the longest overlap, over the load asked for", ""]
	},
	result: [
		"q",
		"share of the strength of a very long overlap",
		""
	],
	source: COMMON_PRACTICE
});
// src/model/working/plateau.ts
/** The plateau of the bond's strength against its overlap. */
function plateauWorking(question) {
	const { overlap, strength } = findPlateau(question);
	if (!strength.mode || strength.ratio <= 0) return {
		steps: [],
		overlap,
		at: null
	};
	const at = overlap ?? 490;
	const here = bondStrengthAt(question, at);
	if (!here.mode) return {
		steps: [],
		overlap,
		at: null
	};
	const card = (which, { mode, ratio: own }, length) => step(ratio(which, `${Number(length.toPrecision(4))} mm`), {
		lambda: mode.reached,
		asked: mode.asked
	}, own);
	return {
		steps: [
			card("long", strength, 500),
			card("plateau", here, at),
			step(plateauShare, {
				R: here.ratio,
				R_long: strength.ratio
			}, here.ratio / strength.ratio)
		],
		overlap,
		at: {
			overlap: at,
			mode: here.mode,
			caseIndex: here.caseIndex
		}
	};
}
// src/main/handlers/explain-figures.ts
function explainFigure(project, resolved, question) {
	if (question.subject === "plateau") return explainPlateau(project, resolved);
	const { part } = question;
	const { settings } = project;
	const { state, loadCase, condition, theta, loadFactor } = seen(project, resolved, question);
	const names = state.assembly.bonds.map(({ name }) => name);
	if (part !== void 0 && !names.includes(part)) return refuse("not-found", "part", `This joint has no bond "${part}". It has: ${names.join(", ")}.`);
	const shown = showFigure(question, {
		state,
		adhesive: resolved.adhesive,
		settings
	}, {
		theta,
		loadFactor,
		names
	});
	if (!shown.ok) return shown;
	const { title, steps, place, like, wholeBondFlows = false, x = 0 } = shown.value;
	const where = [
		`${caseText(loadCase.name, condition?.name ?? null)} (${kindOf(loadCase)})`,
		environment(state.loadCase.temperature, state.loadCase.moisture),
		gapWords[state.gapState],
		...state.assembly.flat ? [] : [`clocking ${clocking(degrees(theta))}`],
		`loads × ${Number(loadFactor.toPrecision(4))}`,
		place
	];
	return ok({
		jointId: resolved.joint.id,
		title,
		where: where.filter((text) => text !== "").join(" · "),
		margin: null,
		cards: cardsOf(steps, domainsLike(state, like, {
			theta,
			x,
			wholeBondFlows
		}))
	});
}
/** The state that is drawn for a focus: what it leaves out is that of the governing row. */
function seen({ settings }, resolved, { focus, there }) {
	const { input, adhesive } = resolved;
	const row = there.length === 1 && focus.gapState !== void 0 && focus.theta !== void 0 ? void 0 : drawn(governingModes(resolved, settings), focus, there);
	const { loadCase, condition, input: loaded } = there.find((one) => row && isCaseOf(one, row)) ?? there[0];
	const states = gapStates(input);
	const wanted = focus.gapState ?? row?.result.gapState ?? "nominal";
	return {
		state: jointState(input, adhesive, loaded, states.includes(wanted) ? wanted : "nominal", settings),
		loadCase,
		condition,
		theta: focus.theta === void 0 ? row?.result.theta ?? 0 : radians(focus.theta),
		loadFactor: focus.loadFactor ?? 1
	};
}
/** Domains as for a margin of that mode; a figure asks no factor and has no place of its own. */
const domainsLike = (state, mode, at) => domainsOf({
	mode,
	part: "",
	reached: 1,
	asked: 1,
	margin: 0,
	place: "within",
	gapState: state.gapState,
	...at
}, state);
function showFigure({ subject, part, focus }, given, { theta, loadFactor, names }) {
	const state = {
		theta,
		loadFactor,
		stations: focus.stations ?? 161
	};
	const all = names.map((_name, j) => j);
	const asked = part === void 0 ? all : all.filter((j) => names[j] === part);
	const inBond = (j) => names.length > 1 ? `, ${names[j]}` : "";
	/** Without a bond named, the one with the larger figure. */
	const largest = (of) => asked.map((j) => ({
		j,
		...of(j)
	})).reduce((a, b) => last(b.steps) > last(a.steps) ? b : a);
	switch (subject) {
		case "peak-shear": {
			const { j, steps, x } = largest((i) => peakShearWorking(given, state, i));
			const title = `Peak shear${inBond(j)}`;
			return ok({
				title,
				steps,
				place: `at ${millimetres(x)}`,
				x,
				like: "adhesive-yield"
			});
		}
		case "peak-peel": {
			const { j, steps, x } = largest((i) => peakPeelWorking(given, state, i));
			const title = `Peak peel${inBond(j)}`;
			return ok({
				title,
				steps,
				place: `at ${millimetres(x)}`,
				x,
				like: "adhesive-peel"
			});
		}
		case "edge-moment": {
			if (!isFlatSingle(given.state.assembly)) return refuse("not-found", "subject", "Only a flat single lap has an edge moment: this joint carries its load without one.");
			const title = `Edge moment (${edgeMomentWords[given.settings.edgeMoment ?? "goland-reissner"]} is used)`;
			return ok({
				title,
				steps: edgeMomentWorking(given, loadFactor),
				place: "",
				like: "adhesive-peel"
			});
		}
		default: {
			const strength = strengthAt(given.state.at(theta));
			if (!strength) return refuse("not-found", "subject", "No load acts at this clocking: a strength as a factor on it means nothing.");
			return ok({
				title: `Strength of the bond${inBond(strength.bond)}`,
				steps: strengthSteps(given, theta),
				place: `at the ${strength.end}`,
				like: "adhesive-strain",
				wholeBondFlows: strength.wholeBondFlows
			});
		}
	}
}
const last = (steps) => steps[steps.length - 1]?.result ?? 0;
function explainPlateau({ settings }, resolved) {
	const { input: joint, adhesive, cases } = resolved;
	const { steps, overlap, at } = plateauWorking({
		joint,
		adhesive,
		cases: cases.map(({ input }) => input),
		settings
	});
	const found = at && cases[at.caseIndex];
	if (!found) return refuse("not-found", "subject", "The bond has no strength to compare: no load acts on it, or temperature alone fails it.");
	const { loadCase, condition, input } = found;
	const { mode } = at;
	const state = jointState(withOverlap(joint, at.overlap), adhesive, input, mode.gapState, settings);
	const where = [
		`${caseText(loadCase.name, condition?.name ?? null)} (${kindOf(loadCase)})`,
		gapWords[mode.gapState],
		overlap === null ? "no plateau within the longest overlap that is looked at" : `plateau at ${millimetres(overlap)}`
	];
	return ok({
		jointId: resolved.joint.id,
		title: "Plateau of the bond",
		where: where.join(" · "),
		margin: null,
		cards: cardsOf(steps, domainsOf(mode, state))
	});
}
// src/main/handlers/explain-refusals.ts
/** Why a mode has no margin here, in plain words. */
const modes = {
	"adhesive-yield": true,
	"adhesive-strain": true,
	"adhesive-peel": true,
	"peel-shear": true,
	interlaminar: true,
	"first-ply": true,
	fracture: true,
	"durability-trough": true,
	"cyclic-shear": true,
	"metal-yield": true,
	"metal-ultimate": true,
	"laminate-strength": true
};
const isMode = (subject) => Object.hasOwn(modes, subject);
/** Modes that limit the service of a joint: an ultimate case does not ask for them. */
const service = /* @__PURE__ */ new Set([
	"adhesive-yield",
	"peel-shear",
	"durability-trough",
	"cyclic-shear",
	"metal-yield"
]);
/** @param asked the cases that the question is about */
function whyNot(mode, resolved, asked) {
	return lacking(mode, resolved) ?? notAsked(mode, asked) ?? (asked.every(({ input }) => Object.values(input.loads).every((load) => load === 0)) ? "No load acts on the joint there: without load there is no margin." : "No factor on these loads reaches this mode: they do not act on it.");
}
/** What the project does not give. */
function lacking(mode, { adhesive, input }) {
	const { tube, outers } = assemble(input, "nominal");
	const walls = [tube, ...outers].map(({ material }) => material);
	const kinds = new Set(walls.map(({ kind }) => kind));
	switch (mode) {
		case "adhesive-peel":
		case "peel-shear": return adhesive.states.some(({ peelStrength }) => peelStrength === void 0) ? "Peel is not judged: the adhesive has no peel strength at every temperature and moisture. Give it one from coupons." : null;
		case "fracture": return adhesive.fracture ? null : "Fracture is not judged: the adhesive has no fracture energies. Give it those of your coupons.";
		case "cyclic-shear": return adhesive.fatigue ? null : "Cyclic shear is not judged: the adhesive has no S-N line. Give it one from coupons.";
		case "interlaminar":
			if (walls.every(({ kind }) => kind === "isotropic")) return "No wall of this joint is a laminate: it has no plies to part.";
			return walls.some((material) => interlaminarStrengths(material) !== null) ? null : "Failure between plies is not judged: the laminate has no strengths across and between its plies.";
		case "first-ply": return kinds.has("laminate") ? null : "No wall of this joint is given as a stack of plies: there is no first ply to judge.";
		case "metal-yield":
		case "metal-ultimate": return kinds.has("isotropic") ? null : "No wall of this joint is a metal.";
		case "laminate-strength": return kinds.has("orthotropic") ? null : "No wall of this joint is a laminate given as one material; a stack of plies is judged by its first ply.";
		default: return null;
	}
}
function notAsked(mode, cases) {
	const kinds = new Set(cases.map(({ loadCase }) => loadCase.kind));
	if (mode === "cyclic-shear" && !kinds.has("cyclic")) return "Cyclic shear is asked of cyclic cases only, and there is none here.";
	if (service.has(mode) && !kinds.has("limit") && !kinds.has("cyclic")) return "This mode limits the service of a joint: it is asked of limit and cyclic cases, not of an ultimate one.";
	return null;
}
// src/main/handlers/explain-rows.ts
/** Which result a question is about: the governing row, or the worst of a mode in one case. */
/** What the search for a mode takes from others, in their order: its last digits depend on it. */
const needs = {
	"adhesive-peel": ["adhesive-strain"],
	interlaminar: ["adhesive-strain", "adhesive-peel"]
};
const onlyFor = (mode) => /* @__PURE__ */ new Set([mode, ...needs[mode] ?? []]);
/** Rows of a mode that a part and a place leave; a place only where there are several. */
function fitting(rows, { mode, part, place }) {
	const same = rows.filter(({ result }) => result.mode === mode && (part === void 0 || result.part === part));
	const there = same.filter(({ result }) => result.place === place);
	return place !== void 0 && there.length > 0 ? there : same;
}
/**
* @param rows the governing rows of the mode
* @param there the cases in the focus
* @returns the row itself where it lies in the focus, else the worst of the mode in the focus
*/
function rowInFocus(resolved, settings, rows, about, { gapState }, there) {
	const isThere = ({ loadCase, condition, result }) => there.some((one) => one.loadCase === loadCase && one.condition === condition) && (gapState === void 0 || result.gapState === gapState);
	const listed = fitting(rows, about).find(isThere);
	if (listed) return listed;
	const found = [];
	for (const { loadCase, condition, input } of there) for (const gap of gapStates(resolved.input)) {
		if (gapState !== void 0 && gap !== gapState) continue;
		const state = jointState(resolved.input, resolved.adhesive, input, gap, settings);
		const only = onlyFor(about.mode);
		for (const result of allModes(state, resolved.adhesive, settings.factors, { only })) found.push({
			result,
			loadCase,
			condition,
			state
		});
	}
	const [worst] = fitting(found, about).sort((a, b) => a.result.margin - b.result.margin);
	return worst ? {
		...worst,
		result: refineStrength(worst.state, worst.result)
	} : null;
}
// src/main/handlers/explain.ts
/** The working of a figure: which state it is of, its cards, where it holds. */
const isFigure = (subject) => figures.includes(subject);
/** Figures that a joint of this type has: only a flat single lap has an edge moment. */
const figuresOf = ({ type }) => figures.filter((figure) => figure !== "edge-moment" || type === "flat-single");
const list = (names) => [...new Set(names)].join(", ");
function explain(project, resolved, question) {
	const { subject, focus } = question;
	const { joint, index, cases } = resolved;
	if (cases.length === 0) return refuse("bad-input", `joints.${index}.loads`, `The joint "${joint.name}" has no load case: give it one to see a working.`);
	const there = casesInFocus(project, resolved, focus);
	if (!there.ok) return there;
	if (!isFigure(subject) && !isMode(subject)) {
		const modes = governingModes(resolved, project.settings).map(({ result }) => result.mode);
		return refuse("not-found", "subject", `Nothing here is called "${subject}". This joint has: ${list([...modes, ...figuresOf(joint)])}.`);
	}
	return isFigure(subject) ? explainFigure(project, resolved, {
		...question,
		subject,
		there: there.value
	}) : explainMode(project, resolved, {
		...question,
		subject,
		there: there.value
	});
}
function explainMode(project, resolved, { subject: mode, part, place, focus, there }) {
	const { settings } = project;
	const rows = governingModes(resolved, settings, false, onlyFor(mode));
	const row = rowInFocus(resolved, settings, rows, {
		mode,
		part,
		place
	}, focus, there);
	if (!row) {
		const parts = fitting(rows, { mode }).map(({ result }) => result.part);
		return part !== void 0 && parts.length > 0 && !parts.includes(part) ? refuse("not-found", "part", `The ${part} has no such margin; it is listed for: ${list(parts)}.`) : refuse("not-found", "subject", whyNot(mode, resolved, there));
	}
	const { state, result, loadCase, condition } = row;
	const margin = toMargin(row, resolved, settings.targetMargin, "");
	const steps = marginWorking({
		state,
		adhesive: resolved.adhesive,
		settings,
		result
	});
	const where = [
		`${caseText(loadCase.name, condition?.name ?? null)} (${kindOf(loadCase)})`,
		environment(state.loadCase.temperature, state.loadCase.moisture),
		whereText(margin, state.assembly.flat),
		...state.assembly.bonds.length > 1 || result.part !== "bond" ? [result.part] : []
	];
	return ok({
		jointId: resolved.joint.id,
		title: margin.label,
		where: where.join(" · "),
		margin,
		cards: cardsOf(steps, domainsOf(result, state))
	});
}
// src/main/handlers/laminate.ts
/** The request about one laminate: its stack, stiffness and properties at a wall thickness. */
const heldNote = (free) => Object.keys(free).length > 0 ? `${CURVATURE_HELD}; beside them those of the wall free to bend and twist, where they differ by more than 1 %.` : `${CURVATURE_HELD}; those of the wall free to bend and twist differ by no more than 1 %.`;
function describeLaminate(project, adherendId, wall, flat) {
	const index = project.adherends.findIndex(({ id }) => id === adherendId);
	const adherend = project.adherends[index];
	if (adherend?.kind !== "laminate") return refuse("not-found", "adherends", `There is no laminate with the id "${adherendId}" in this project.`);
	const ply = project.plies.find(({ id }) => id === adherend.ply);
	const reading = readStack(adherend.stack);
	if (!reading.ok) return refuse("bad-input", `adherends.${index}.stack`, reading.message);
	const own = ply.thickness * reading.angles.length;
	try {
		const stack = makeStack(ply, reading.angles, wall ?? own);
		const stiffness = stiffnessOf$1(stack);
		const plane = inPlaneConstants(stiffness);
		const bending = flexuralConstants(stiffness);
		const through = throughConstants(stack);
		const traits = traitsOf(stack, flat ? STRIP_FACES : TUBE_FACES);
		const free = freeDifferences(stiffness);
		const thickness = thicknessOf(stack);
		const notes = [...traits.reasons];
		if (plane.curvatureHeld) notes.push(heldNote(free));
		if (Math.abs(thickness / own - 1) > .001) notes.push(`Scaled: ${reading.angles.length} plies of ${ply.thickness} mm make ${Number(own.toPrecision(4))} mm, the wall is ${Number(thickness.toPrecision(4))} mm.`);
		return ok({
			adherendId,
			stack: reading.canonical,
			plies: stack.plies.map(({ angle, thickness: t }) => ({
				angle,
				thickness: t
			})),
			plyThickness: own,
			wall: thickness,
			symmetric: traits.symmetric,
			balanced: traits.balanced,
			notes,
			a: rowsOf(stiffness.a),
			b: rowsOf(stiffness.b),
			d: rowsOf(stiffness.d),
			plane: {
				axialModulus: plane.axialModulus,
				hoopModulus: plane.hoopModulus,
				shearModulus: plane.shearModulus,
				poisson: plane.poisson,
				axialExpansion: plane.axialExpansion,
				hoopExpansion: plane.hoopExpansion
			},
			curvatureHeld: plane.curvatureHeld,
			free,
			bending: {
				axialModulus: bending.axialModulus,
				hoopModulus: bending.hoopModulus
			},
			through: {
				modulus: through.modulus,
				shearModulus: through.axialShearModulus,
				expansion: through.expansion,
				interlaminarTension: through.interlaminarTension,
				interlaminarShear: through.interlaminarShear
			}
		});
	} catch (error) {
		if (!(error instanceof ModelError)) throw error;
		const plyIndex = project.plies.indexOf(ply);
		return refuse("bad-input", `plies.${plyIndex}`, error.message);
	}
}
// src/main/jobs/desk.ts
/** Where a caller asks about its own jobs. */
const unknown = {
	state: "unknown",
	done: 0,
	total: 0,
	what: "",
	elapsed: 0,
	left: null
};
/** Without workers nothing is ever on its way while somebody asks. */
const emptyDesk = {
	progress: () => unknown,
	stop: () => false
};
const progressOf = (desk, job) => ok(desk.progress(job));
const stopAt = (desk, job) => ok({ stopped: desk.stop(job) });
// src/main/ask.ts
/**
* The one door to the model. Whatever carries a request (Electron IPC, the loopback route, the
* command line), it ends here: name and input are checked, the handler runs, the reply is data.
*/
/** Runs a handler on one joint of a checked project. */
function withJoint(document, jointId, run) {
	const project = readProject(document);
	if (!project.ok) return project;
	const index = project.value.joints.findIndex(({ id }) => id === jointId);
	if (index < 0) {
		const known = project.value.joints.map(({ id }) => id);
		const list = known.length > 12 ? `${known.slice(0, 12).join(", ")}, …` : known.join(", ");
		return refuse("not-found", "joints", `There is no joint "${jointId}" in this project. It has: ${list || "none"}.`);
	}
	return guarded(index, () => run(project.value, resolveJoint(project.value, index)));
}
function makeHandlers(options) {
	return {
		"app.about": () => ok({
			version,
			modelVersion: "2",
			carrier: options.carrier
		}),
		"project.initial": () => (options.initial ?? openDemo)(),
		"project.demo": () => openDemo(),
		"project.read": ({ text, origin }) => {
			const project = readProjectText(text);
			return project.ok ? ok({
				document: project.value,
				origin
			}) : project;
		},
		"project.check": ({ document }, context) => {
			const project = readProject(document);
			return project.ok ? ok(check(project.value, context)) : project;
		},
		"project.corners": ({ document, jointId }, context) => {
			if (jointId !== void 0) return withJoint(document, jointId, (project) => ok(corners(project, { jointId }, context)));
			const project = readProject(document);
			return project.ok ? ok(corners(project.value, {}, context)) : project;
		},
		"project.schema": () => ok(toJSONSchema(projectShape)),
		"joint.analyse": ({ document, jointId, focus }) => withJoint(document, jointId, (project, resolved) => analyse(project, resolved, focus)),
		"joint.stress": ({ document, jointId, focus }) => withJoint(document, jointId, (project, resolved) => {
			const stress = stressOf(project, resolved, focus, governingModes(resolved, project.settings));
			if (!stress.ok || stress.value) return stress;
			return refuse("bad-input", `joints.${resolved.index}.loads`, `The joint "${resolved.joint.name}" has no load case: give it one.`);
		}),
		"joint.explain": ({ document, jointId, ...question }) => withJoint(document, jointId, (project, resolved) => explain(project, resolved, question)),
		"laminate.describe": ({ document, adherendId, wall, flat = false }) => {
			const project = readProject(document);
			return project.ok ? describeLaminate(project.value, adherendId, wall, flat) : project;
		},
		"joint.sweep": ({ document, jointId, from, to, points }, context) => withJoint(document, jointId, (project, resolved) => sweep(project, resolved, {
			from,
			to,
			points
		}, context)),
		"job.progress": ({ job }, desk) => progressOf(desk, job),
		"job.stop": ({ job }, desk) => stopAt(desk, job),
		"joint.springs": ({ document, jointId, caseId }) => withJoint(document, jointId, (project, resolved) => springs(project, resolved, caseId)),
		"joint.variant": ({ document, jointId, lap, equal }, context) => withJoint(document, jointId, (project, resolved) => variant(project, resolved, {
			lap,
			equal
		}, context)),
		"project.compare": ({ document, columns, caseId }, context) => {
			const project = readProject(document);
			return project.ok ? compare(project.value, {
				columns,
				caseId
			}, context) : project;
		}
	};
}
function createAsk(options) {
	const handlers = makeHandlers(options);
	return async (name, input, context = {}) => {
		if (!isRequestName(name)) return refuse("bad-request", "", "There is no such request.");
		const parsed = requests[name].safeParse(input);
		if (!parsed.success) {
			const [issue] = parsed.error.issues;
			const place = issue?.path.join(".") ?? "";
			return refuse("bad-request", place, `${name}: ${place || "the request"} is malformed.`);
		}
		try {
			const besides = isLongRequest(name) ? {
				progress: context.progress ?? unwatched.progress,
				share: context.share
			} : context.desk ?? emptyDesk;
			return handlers[name](parsed.data, besides);
		} catch (error) {
			const said = error instanceof Error ? error.message : String(error);
			return refuse("internal", "", `Something in Lapwright itself went wrong: ${said}`);
		}
	};
}
// .ab.mts
const d = openDemo();
if (!d.ok) throw 0;
const document = d.value.document;
const ask = createAsk({ carrier: "terminal" });
const cpu = async (f) => {
	const a = process.cpuUsage();
	await f();
	const b = process.cpuUsage(a);
	return (b.user + b.system) / 1e3;
};
const out = {};
for (let k = 0; k < Number(process.argv[2] ?? 5); k++) {
	const put = (n, v) => {
		out[n] = Math.min(out[n] ?? 1e9, v);
	};
	put("check", await cpu(() => ask("project.check", { document })));
	for (const j of document.joints) put(j.id, await cpu(() => ask("joint.analyse", {
		document,
		jointId: j.id,
		focus: {}
	})));
}
console.log(JSON.stringify(out));
export {};
