package org.leafward.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

import org.jspecify.annotations.Nullable;

/**
 * The chance of cold through a season: falling through spring, rising through fall.
 *
 * @param id unique among the pictures of a page, a word of letters, digits and hyphens
 * @param threshold the temperature in words, for example "32 °F (0.0 °C)"
 * @param spring chances that cold comes on or after a date
 * @param fall chances that cold comes on or before a date
 * @param lines dates that get a line of their own, for example a site's
 */
public record FreezeCurve(String id, String threshold, List<Chance> spring, List<Chance> fall, List<DateLine> lines) {

	public FreezeCurve {
		Pictures.checkId(id);
		spring = List.copyOf(spring);
		fall = List.copyOf(fall);
		lines = List.copyOf(lines);
	}

	/**
	 * Whether there is anything to draw.
	 * @return false where neither spring nor fall has two chances
	 */
	public boolean drawable() {
		return this.spring.size() > 1 || this.fall.size() > 1;
	}

	/**
	 * The picture: date from left to right, chance from bottom to top. It takes the width
	 * it is given.
	 * @return inline SVG
	 * @throws IllegalStateException when it is not {@link #drawable}
	 */
	public String svg() {
		if (!drawable()) {
			throw new IllegalStateException("curve %s has fewer than two chances".formatted(this.id));
		}
		return new FreezeCurveDrawing(this).draw();
	}

	/**
	 * The figures behind the picture.
	 * @return a row for each chance, smallest first
	 */
	public List<TableRow> rows() {
		SortedSet<Integer> percents = new TreeSet<>();
		this.spring.forEach((chance) -> percents.add(chance.percent()));
		this.fall.forEach((chance) -> percents.add(chance.percent()));
		List<TableRow> rows = new ArrayList<>();
		for (int percent : percents) {
			rows.add(new TableRow(percent, at(this.spring, percent), at(this.fall, percent)));
		}
		return rows;
	}

	static @Nullable LocalDate at(List<Chance> chances, int percent) {
		return chances.stream()
			.filter((chance) -> chance.percent() == percent)
			.map(Chance::date)
			.findFirst()
			.orElse(null);
	}

	/**
	 * A point of the curve.
	 *
	 * @param percent chance, 1 to 99
	 * @param date the date at that chance
	 */
	public record Chance(int percent, LocalDate date) {

		public Chance {
			if (percent < 1 || percent > 99) {
				throw new IllegalArgumentException("chance %d is outside 1 to 99 percent".formatted(percent));
			}
		}

	}

	/**
	 * A row of the table.
	 *
	 * @param percent chance
	 * @param spring date in spring; null when not known
	 * @param fall date in fall; null when not known
	 */
	public record TableRow(int percent, @Nullable LocalDate spring, @Nullable LocalDate fall) {
	}

}
