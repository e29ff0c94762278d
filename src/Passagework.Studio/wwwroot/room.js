// Tells a page how wide a part of it may be, and remembers it for the first picture of the next page.
export function watch(page, room) {
  const seen = new ResizeObserver(([entry]) => {
    const width = Math.floor(entry.contentRect.width);
    document.cookie = `width=${width};path=/;max-age=31536000;samesite=strict`;
    page.invokeMethodAsync("Tell", width);
  });
  seen.observe(room);
  return { stop: () => seen.disconnect() };
}
