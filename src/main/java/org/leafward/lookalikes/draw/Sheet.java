package org.leafward.lookalikes.draw;

import org.leafward.pages.Svg;

/** What the drawings share: their frame, hatching, and shapes cut to an outline. */
final class Sheet {

	private final Svg svg = new Svg();

	private final String name;

	/**
	 * Begins a drawing.
	 * @param name names it within a page
	 * @param width px
	 * @param height px
	 */
	Sheet(String name, int width, int height) {
		this.name = name;
		this.svg.open("svg", "class", "specimen", "viewBox", "0 0 %d %d".formatted(width, height), "width", width,
				"height", height, "aria-hidden", "true", "focusable", "false");
		this.svg.open("defs");
		this.svg.open("pattern", "id", "dead-" + name, "width", 5, "height", 5, "patternUnits", "userSpaceOnUse");
		this.svg.empty("rect", "class", "tissue-dead", "width", 5, "height", 5);
		this.svg.empty("path", "class", "tissue-hatch", "d", "M-1 6 6-1");
		this.svg.close();
		this.svg.open("pattern", "id", "yellow-" + name, "width", 4, "height", 4, "patternUnits", "userSpaceOnUse");
		this.svg.empty("rect", "class", "tissue-yellow", "width", 4, "height", 4);
		this.svg.empty("circle", "class", "tissue-dot", "cx", 2, "cy", 2, "r", 0.7);
		this.svg.close();
		this.svg.close();
	}

	/** Begins a part that is cut to an outline. */
	Sheet within(String outline) {
		this.svg.open("clipPath", "id", "cut-" + this.name);
		this.svg.empty("path", "d", outline);
		this.svg.close();
		this.svg.open("g", "clip-path", "url(#cut-%s)".formatted(this.name));
		return this;
	}

	Sheet end() {
		this.svg.close();
		return this;
	}

	Sheet live(String path) {
		this.svg.empty("path", "class", "tissue-live", "d", path);
		return this;
	}

	Sheet live(String path, String transform) {
		this.svg.empty("path", "class", "tissue-live", "d", path, "transform", transform);
		return this;
	}

	Sheet dead(String path) {
		this.svg.empty("path", "fill", "url(#dead-%s)".formatted(this.name), "d", path);
		return this;
	}

	Sheet dead(double x, double y, double r) {
		this.svg.empty("circle", "fill", "url(#dead-%s)".formatted(this.name), "cx", x, "cy", y, "r", r);
		return this;
	}

	Sheet yellow(String path) {
		this.svg.empty("path", "fill", "url(#yellow-%s)".formatted(this.name), "d", path);
		return this;
	}

	Sheet bleached(String path) {
		this.svg.empty("path", "class", "tissue-bleached", "d", path);
		return this;
	}

	Sheet line(String path) {
		this.svg.empty("path", "class", "tissue-line", "d", path);
		return this;
	}

	Sheet vein(String path) {
		this.svg.empty("path", "class", "tissue-vein", "d", path);
		return this;
	}

	Sheet strong(String path) {
		this.svg.empty("path", "class", "tissue-strong", "d", path);
		return this;
	}

	Sheet fleck(double x, double y, double r) {
		this.svg.empty("circle", "class", "tissue-fleck", "cx", x, "cy", y, "r", r);
		return this;
	}

	String svg() {
		return this.svg.close().toString();
	}

}
