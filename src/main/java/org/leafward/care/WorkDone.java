package org.leafward.care;

import java.text.Normalizer;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;
import org.leafward.measure.Given;
import org.leafward.register.WaterUnit;

/**
 * What is said of work that was done.
 *
 * @param day on which, in the time zone of the site
 * @param amount how much, 0 to 1,000,000; null when nobody measured
 * @param unit what the amount is in; null without an amount
 * @param area ground that got the amount, m² for litres, square feet for gallons; null
 * when unknown
 * @param note at most 2,000 characters, may have several lines, may be empty
 */
public record WorkDone(LocalDate day, @Nullable Double amount, @Nullable AmountUnit unit, @Nullable Double area,
		String note) {

	/** Characters of the longest note. */
	public static final int LONGEST_NOTE = 2000;

	private static final double MOST = 1_000_000;

	public WorkDone {
		Findings all = new Findings();
		Double given = amount;
		Double ground = area;
		String text = note;
		boolean bare = unit == null;
		all.check(() -> checkAmount(given, bare));
		all.check(() -> checkArea(ground));
		note = all.give(all.read(() -> note(text)));
		unit = (amount != null) ? unit : null;
	}

	/**
	 * Work without an amount.
	 * @param day on which
	 * @param note may be empty
	 * @return the work
	 */
	public static WorkDone on(LocalDate day, String note) {
		return new WorkDone(day, null, null, null, note);
	}

	/**
	 * The depth of water that was given.
	 * @return mm; null when the amount is not one of water, or a volume without its area
	 */
	@Nullable Double millimetres() {
		WaterUnit water = (this.unit != null) ? this.unit.water() : null;
		if (this.amount == null || water == null || (water.volume() && this.area == null)) {
			return null;
		}
		return water.millimetres(this.amount, (this.area != null) ? this.area : 1);
	}

	// Written so that they catch NaN too.
	private static void checkAmount(@Nullable Double amount, boolean bare) {
		if (amount == null) {
			return;
		}
		if (!(amount >= 0 && amount <= MOST)) {
			throw new BadInput("an amount of %s is outside 0 to %.0f".formatted(amount, MOST), "amount",
					"check the amount and its unit");
		}
		if (bare) {
			throw new BadInput("the amount has no unit", "unit", "say what it is in");
		}
	}

	private static void checkArea(@Nullable Double area) {
		if (area != null && !(area > 0 && area <= MOST)) {
			throw new BadInput("an area of %s is outside 0 to %.0f".formatted(area, MOST), "area",
					"give the ground that got the amount, or leave it empty");
		}
	}

	/** Lines stay, anything else that breaks a line doesn't. */
	static String note(String text) {
		String clean = Normalizer.normalize(text.strip(), Normalizer.Form.NFC).replace("\r\n", "\n");
		if (clean.length() > LONGEST_NOTE) {
			throw new BadInput(
					"the note has %d characters; at most %d are allowed".formatted(clean.length(), LONGEST_NOTE),
					"note", "shorten it");
		}
		clean.lines().forEach((line) -> Given.line("note", line.replace('\t', ' ')));
		return clean;
	}

}
