/* Looks words up in the list of help pages. No request leaves the page. */
(() => {
  const pages = /* pages */ [];
  const box = document.getElementById("search");
  const input = document.getElementById("search-words");
  const list = document.getElementById("search-found");
  const count = document.getElementById("search-count");
  const plain = (text) => text.toLowerCase().replace(/[-\s]+/g, " ");
  const places = pages.map((page) => [plain(page.title), plain(page.summary), plain(page.words)]);
  /* Points of one word: a title counts most; 0 where no place has it. */
  const points = (texts, word) =>
    (texts[0].includes(word) ? 4 : 0) + (texts[1].includes(word) ? 2 : 0) + (texts[2].includes(word) ? 1 : 0);
  const item = (page) => {
    const line = document.createElement("li");
    const link = document.createElement("a");
    link.href = page.file;
    link.textContent = page.title;
    line.append(link, `: ${page.summary}`);
    return line;
  };
  const look = () => {
    const words = plain(input.value)
      .split(" ")
      .filter((word) => word !== "");
    const scored = pages.map((page, at) => {
      const each = words.map((word) => points(places[at], word));
      return { page, sum: each.includes(0) ? 0 : each.reduce((sum, one) => sum + one, 0) };
    });
    const found = words.length === 0 ? [] : scored.filter(({ sum }) => sum > 0).sort((a, b) => b.sum - a.sum);
    list.replaceChildren(...found.slice(0, 20).map(({ page }) => item(page)));
    count.textContent =
      words.length === 0
        ? ""
        : found.length === 0
          ? "No page has all of these words."
          : `${found.length} page${found.length === 1 ? "" : "s"}`;
  };
  input.addEventListener("input", look);
  box.hidden = false;
  look();
})();
