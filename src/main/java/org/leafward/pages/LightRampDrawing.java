package org.leafward.pages;

import java.util.List;
import java.util.stream.IntStream;

import org.leafward.pages.LightRampPicture.Day;

/** Draws a {@link LightRampPicture}. */
final class LightRampDrawing {

	private static final int HEAD = 44;

	private static final int HEIGHT = 190;

	private static final double AIR = 1.08;

	/** Words closer than this to a line would hide it, px. */
	private static final int BESIDE = 6;

	private final LightRampPicture picture;

	private final List<Day> days;

	private final Plot plot;

	private final Formats formats;

	LightRampDrawing(LightRampPicture picture) {
		this.picture = picture;
		this.days = picture.days();
		double most = Math.max(picture.present(), this.days.stream().mapToDouble(Day::site).max().orElse(1));
		this.plot = new Plot(new DateAxis(this.days.get(0).date(), last().date()), HEAD, HEIGHT, 0, most * AIR);
		this.formats = new Formats(last().date().getYear());
	}

	private Day last() {
		return this.days.get(this.days.size() - 1);
	}

	String draw() {
		String id = this.picture.id();
		Svg svg = new Svg();
		svg.open("svg", "class", "picture light-ramp", "role", "img", "width", "100%", "height",
				this.plot.bottom() + Pictures.LINE + 10, "aria-labelledby", id + "-title " + id + "-desc");
		svg.element("title", "Light by day, from where the plant stands to where it will grow", "id", id + "-title");
		svg.element("desc", description(), "id", id + "-desc");
		Pictures.patterns(svg, id);
		svg.element("text", "Light, mol/m² a day", "class", "row-label", "x", "0", "y", 13);
		ramp(svg);
		held(svg);
		lines(svg);
		svg.empty("line", "class", "axis-line", "x1", "0", "x2", "100%", "y1", this.plot.bottom(), "y2",
				this.plot.bottom());
		dates(svg);
		return svg.close().toString();
	}

	/** A bar for each day, so that the last day is as wide as the others. */
	private void ramp(Svg svg) {
		StringBuilder bars = new StringBuilder();
		this.days.forEach((day) -> this.plot.bar(bars, day.date(), 0, day.light(), 1));
		this.plot.open(svg);
		svg.empty("path", "class", "ramp-light", "fill", "url(#" + this.picture.id() + "-ramp)", "d", bars,
				"vector-effect", "non-scaling-stroke");
		svg.close();
	}

	/** The hatch stands on the whole picture's scale, or it would be stretched. */
	private void held(Svg svg) {
		for (Day day : this.days) {
			if (day.held() != null) {
				double start = this.plot.axis().start(day.date());
				svg.empty("rect", "class", "mark-hold-off", "fill", "url(#" + this.picture.id() + "-hold-off)", "x",
						Pictures.percent(start), "width", Pictures.percent(this.plot.axis().end(day.date()) - start),
						"y", this.plot.top(), "height", HEIGHT);
			}
		}
	}

	private void lines(Svg svg) {
		double now = this.plot.y(this.picture.present());
		svg.empty("line", "class", "light-now", "x1", "0", "x2", "100%", "y1", now, "y2", now);
		this.plot.open(svg);
		this.plot.line(svg, "light-site",
				this.days.stream().map((day) -> new Plot.At(day.date(), day.site())).toList());
		svg.close();
		svg.element("text", "its place: " + moles(last().site()), "class", "point-date", "x", "100%", "y",
				HEAD - BESIDE - 4, "text-anchor", "end");
		double below = now + Pictures.LINE - 2;
		svg.element("text", "now: " + moles(this.picture.present()), "class", "point-date", "x", "0", "dx", 4, "y",
				(below < this.plot.bottom() - 2) ? below : now - BESIDE);
	}

	/** The first and the last day, and between them what has room. */
	private void dates(Svg svg) {
		Lanes lanes = new Lanes();
		IntStream.concat(IntStream.of(0, this.days.size() - 1), IntStream.range(1, this.days.size() - 1))
			.forEach((at) -> {
				Day day = this.days.get(at);
				String words = this.formats.dayOfYear(day.date());
				double middle = this.plot.percent(day.date());
				double half = Lanes.width(words + "  ") / 2;
				double start = Math.max(0, Math.min(100 - 2 * half, middle - half));
				if (lanes.place(start, start + 2 * half) == 0) {
					svg.element("text", words, "class", "small", "x", Pictures.percent(Math.max(0, start)), "y",
							this.plot.bottom() + Pictures.LINE, "dx", 2);
				}
			});
	}

	private String moles(double light) {
		return this.formats.number(light, (light < 9.95) ? 1 : 0);
	}

	private String description() {
		long held = this.days.stream().filter((day) -> day.held() != null).count();
		return ("From %s to %s the light grows from %s to %s mol/m² a day; the plant gets %s now, and its place has %s. %s held. "
				+ "The table below has the days.")
			.formatted(this.formats.day(this.days.get(0).date()), this.formats.day(last().date()),
					moles(this.days.get(0).light()), moles(last().light()), moles(this.picture.present()),
					moles(last().site()), (held == 0) ? "No day is" : this.formats.count(held, "day is", "days are"));
	}

}
