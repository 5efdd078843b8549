/** Does something once, when an element comes near the window. */
export function whenNear(place: Element | null, act: () => unknown): void {
  if (place === null) return;
  const near = new IntersectionObserver(
    (entries) => {
      if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
      near.disconnect();
      void act();
    },
    { rootMargin: "150px" },
  );
  near.observe(place);
}
