package org.leafward.advisories.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.leafward.advisories.picture.Drawn.Patch;
import org.leafward.advisories.picture.Drawn.Stroke;
import org.leafward.advisories.picture.Drawn.Words;
import org.leafward.pages.print.Lettering;
import org.leafward.regions.County;
import org.leafward.regions.core.Area.Polygon;
import org.leafward.regions.core.Extent;
import org.leafward.regions.core.MapProjection;
import org.leafward.regions.core.Position;
import org.leafward.regions.core.Ring;
import org.springframework.stereotype.Component;

/** Lays words and map out: side by side, or one below the other. */
@Component
public class PosterDrawing {

	private static final double MARGIN = 56;

	private static final double SMALL = 20;

	/** Letters of a headline, from the largest that may be to the smallest. */
	private static final double[] SIZES = { 68, 60, 54, 48, 43, 38, 34, 30 };

	private final Lettering lettering;

	private final Palette palette;

	PosterDrawing(Lettering lettering, Palette palette) {
		this.lettering = lettering;
		this.palette = palette;
	}

	/**
	 * Draws a poster.
	 * @param poster what it says
	 * @param shapes the counties of the map, at least one
	 * @param form its form
	 * @return the picture
	 */
	public Drawn draw(Poster poster, List<County> shapes, Poster.Form form) {
		List<Drawn.Mark> marks = new ArrayList<>();
		marks.add(new Patch(List.<double[][]>of(box(0, 0, form.width(), form.height())), this.palette.of("paper"), null,
				0));
		boolean wide = form == Poster.Form.WIDE;
		double column = wide ? 560 : form.width() - 2 * MARGIN;
		double end = words(marks, poster, MARGIN, MARGIN, column, wide ? form.height() - 2 * MARGIN - 40 : 430);
		List<String> sources = fit(poster.sources(), SMALL, form.width() - 2 * MARGIN, 2).lines();
		double rule = form.height() - MARGIN + 18 - sources.size() * SMALL * 1.35;
		for (int i = 0; i < sources.size(); i++) {
			marks.add(new Words(sources.get(i), MARGIN, rule + (i + 1.1) * SMALL * 1.35, SMALL, false,
					this.palette.of("quiet"), null, false));
		}
		marks.add(new Stroke(MARGIN, rule, form.width() - MARGIN, rule, this.palette.of("rule"), 1.5));
		if (wide) {
			map(marks, poster, shapes, MARGIN + column + 30, MARGIN - 16,
					form.width() - MARGIN - (MARGIN + column + 30), rule - MARGIN);
		}
		else {
			map(marks, poster, shapes, MARGIN, end + 24, form.width() - 2 * MARGIN, rule - end - 44);
		}
		return new Drawn(form.width(), form.height(), poster.alt(), marks);
	}

	private static double[][] box(double x, double y, double width, double height) {
		return new double[][] { { x, y }, { x + width, y }, { x + width, y + height }, { x, y + height } };
	}

	/** Lines that fit, at the size at which they do. */
	private record Fitted(List<String> lines, double size) {
	}

	private double words(List<Drawn.Mark> marks, Poster poster, double x, double y, double width, double height) {
		double at = y + 20;
		marks.add(new Words(poster.kicker(), x, at, 24, false, this.palette.of("quiet"), null, false));
		Fitted headline = null;
		List<Fitted> more = List.of();
		for (double size : SIZES) {
			Fitted tried = fit(poster.headline(), size, width, 9);
			double below = Math.max(26, size * 0.52);
			List<Fitted> lines = poster.lines().stream().map((line) -> fit(line, below, width, 9)).toList();
			double needed = 40 + tried.lines().size() * size * 1.14
					+ lines.stream().mapToDouble((one) -> one.lines().size() * below * 1.34 + 12).sum();
			headline = tried;
			more = lines;
			if (needed <= height && tried.lines().size() <= 5) {
				break;
			}
		}
		at += 12;
		if (headline != null) {
			for (String line : headline.lines()) {
				at += headline.size() * 1.14;
				marks.add(new Words(line, x, at, headline.size(), true, this.palette.of("ink"), null, false));
			}
		}
		for (Fitted one : more) {
			at += 14;
			for (String line : one.lines()) {
				at += one.size() * 1.3;
				marks.add(new Words(line, x, at, one.size(), false, this.palette.of("ink"), null, false));
			}
		}
		return at;
	}

	/** Breaks at spaces; what is too long for the last line ends in an ellipsis. */
	private Fitted fit(String text, double size, double width, int most) {
		List<String> lines = new ArrayList<>();
		String line = "";
		for (String word : together(text).split(" ")) {
			String longer = line.isEmpty() ? word : line + " " + word;
			if (this.lettering.width(longer, size) * 1.03 <= width || line.isEmpty()) {
				line = longer;
			}
			else {
				lines.add(line);
				line = word;
			}
		}
		lines.add(line);
		if (lines.size() > most) {
			lines = new ArrayList<>(lines.subList(0, most));
			lines.set(most - 1, lines.get(most - 1) + " …");
		}
		return new Fitted(lines, size);
	}

	/** A number stays with its unit: a space that doesn't break has the same width. */
	private static String together(String text) {
		return text.replaceAll("(\\d) (°|%|mm|cm|in\\b)", "$1\u00a0$2");
	}

	private void map(List<Drawn.Mark> marks, Poster poster, List<County> shapes, double x, double y, double width,
			double height) {
		Map<String, Poster.Shown> shown = poster.counties()
			.stream()
			.collect(Collectors.toMap(Poster.Shown::code, Function.identity(), (one, same) -> one));
		Extent extent = shapes.stream().map((one) -> one.area().extent()).reduce(Extent::with).orElseThrow();
		MapProjection full = new MapProjection(extent, width, 4);
		MapProjection on = (full.height() > height) ? new MapProjection(extent, width * height / full.height(), 4)
				: full;
		double used = (full.height() > height) ? width * height / full.height() : width;
		double left = x + (width - used) / 2;
		double top = y + Math.max(0, (height - on.height()) / 2);
		// Edges of those that are meant last, so that no neighbour's lies over them.
		for (boolean meant : new boolean[] { false, true }) {
			for (County county : shapes) {
				Poster.Shown one = shown.getOrDefault(county.code(), new Poster.Shown(county.code(), null, 0));
				if ((one.weight() > 0) == meant) {
					marks.add(new Patch(rings(county, on, left, top),
							meant ? this.palette.between("paper", "weather", one.weight()) : this.palette.of("sink"),
							this.palette.of(meant ? "ink" : "edge"), meant ? 2.5 : 1.5));
				}
			}
		}
		List<double[]> taken = new ArrayList<>();
		for (boolean meant : new boolean[] { true, false }) {
			for (County county : shapes) {
				Poster.Shown one = shown.getOrDefault(county.code(), new Poster.Shown(county.code(), null, 0));
				if ((one.weight() > 0) == meant) {
					label(marks, county, one, on, left, top, taken);
				}
			}
		}
	}

	private static List<double[][]> rings(County county, MapProjection on, double left, double top) {
		List<double[][]> rings = new ArrayList<>();
		for (Ring ring : county.area().polygons().stream().flatMap(Polygon::rings).toList()) {
			rings.add(ring.positions()
				.stream()
				.map((one) -> new double[] { left + on.x(one.longitude()), top + on.y(one.latitude()) })
				.toArray(double[][]::new));
		}
		return rings;
	}

	/** Its name, and below it what is told of it, where both have room. */
	private void label(List<Drawn.Mark> marks, County county, Poster.Shown shown, MapProjection on, double left,
			double top, List<double[]> taken) {
		Position inside = county.area().inside();
		double x = left + on.x(inside.longitude());
		double y = top + on.y(inside.latitude());
		boolean meant = shown.weight() > 0;
		double size = 24;
		double big = 33;
		String name = county.name();
		double room = on.x(county.area().extent().east()) - on.x(county.area().extent().west());
		double width = Math.max(this.lettering.width(name, size),
				(shown.label() != null) ? this.lettering.width(shown.label(), big) : 0);
		double[] spot = { x - width / 2, y - 30, x + width / 2, y + 38 };
		boolean free = taken.stream()
			.allMatch((one) -> spot[2] <= one[0] || one[2] <= spot[0] || spot[3] <= one[1] || one[3] <= spot[1]);
		if (!free || width > room * 1.05) {
			return;
		}
		taken.add(spot);
		boolean dark = shown.weight() > 0.55;
		String ink = this.palette.of(dark ? "paper" : "ink");
		String halo = dark ? null
				: meant ? this.palette.between("paper", "weather", shown.weight()) : this.palette.of("sink");
		marks.add(new Words(name, x, (shown.label() != null) ? y - 4 : y + 6, size, false, ink, halo, true));
		if (shown.label() != null) {
			marks.add(new Words(shown.label(), x, y + 30, big, true, ink, halo, true));
		}
	}

}
