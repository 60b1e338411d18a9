package org.leafward.pages;

import java.time.LocalDate;
import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * The light of a plant on its way from where it stands to where it will grow.
 *
 * @param id unique among the pictures of a page
 * @param present light that it gets now, mol/m² a day
 * @param days one for each day, in order
 */
public record LightRampPicture(String id, double present, List<Day> days) {

	public LightRampPicture {
		Pictures.checkId(id);
		days = List.copyOf(days);
	}

	/**
	 * Whether there is anything to draw.
	 * @return false with fewer than two days, or without light
	 */
	public boolean drawable() {
		return this.days.size() > 1 && this.days.stream().anyMatch((day) -> day.site() > 0);
	}

	/**
	 * The picture: light by day as an area from dim to lit, held days hatched, the light
	 * now and the site's as lines. It takes the width it is given.
	 * @return inline SVG
	 * @throws IllegalStateException when it is not {@link #drawable}
	 */
	public String svg() {
		if (!drawable()) {
			throw new IllegalStateException("ramp %s has fewer than two days or no light".formatted(this.id));
		}
		return new LightRampDrawing(this).draw();
	}

	/**
	 * The figures behind the picture.
	 * @return a row for each day
	 */
	public List<Day> rows() {
		return this.days;
	}

	/**
	 * A day; light in mol/m².
	 *
	 * @param date the day
	 * @param light that the plant is to get
	 * @param site light of the place where it will grow
	 * @param what where it stands and how long, in a sentence
	 * @param held why it stays in, null when it goes out
	 */
	public record Day(LocalDate date, double light, double site, String what, @Nullable String held) {
	}

}
