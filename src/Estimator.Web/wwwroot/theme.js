// Runs before the first paint, so that the page is never shown in the wrong theme. ?night forces the dark theme for one visit.
(function () {
  const root = document.documentElement;
  const stored = () => { try { return localStorage.getItem('theme'); } catch { return null; } };
  const system = matchMedia('(prefers-color-scheme: dark)');
  const forced = new URLSearchParams(location.search).has('night');
  const set = night => { root.dataset.theme = night ? 'dark' : 'light'; };
  set(forced || (stored() ? stored() === 'dark' : system.matches));
  window.estimatorTheme = {
    isNight: () => root.dataset.theme === 'dark',
    turn: () => {
      const night = root.dataset.theme !== 'dark';
      set(night);
      try { localStorage.setItem('theme', night ? 'dark' : 'light'); } catch { /* a browser that keeps nothing follows the system next time */ }
      return night;
    },
  };
})();
