/** Text onto the clipboard. The desktop window grants no permissions, so the old way stands behind the new one. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return copySelected(text);
  }
}

function copySelected(text: string): boolean {
  const held = document.activeElement;
  const area = document.createElement('textarea');
  area.className = 'hidden';
  area.value = text;
  document.body.append(area);
  area.select();
  try {
    return document.execCommand('copy');
  } catch {
    return false;
  } finally {
    area.remove();
    if (held instanceof HTMLElement) held.focus();
  }
}
