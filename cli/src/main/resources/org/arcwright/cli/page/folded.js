(() => {
  "use strict";
  // A link to a folded part shows that part and folds the others.
  const show = () => {
    const target = document.getElementById(location.hash.slice(1));
    const part = target && target.closest("details");
    if (!part) return;
    document.querySelectorAll("main > details").forEach(other => { other.open = other === part; });
    part.scrollIntoView({ block: "start" });
  };
  addEventListener("hashchange", show);
  document.addEventListener("click", event => {
    if (event.target.closest("a[href^='#']")) setTimeout(show);
  });
  show();
})();
