package org.leafward.amounts.water;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Amount;
import org.leafward.amounts.Quantity;
import org.leafward.measure.BadInput;
import org.leafward.measure.Explanation;
import org.leafward.measure.NumberWords;

/**
 * Water for one tree, by the thickness of its trunk (its calliper).
 *
 * @param lowLitres least for one watering
 * @param highLitres most for one watering
 * @param often how often it is given, in words
 * @param amount what to do, with how it came about
 */
public record TreeWatering(double lowLitres, double highLitres, String often, Amount amount) {

	/** University of Minnesota Extension: US gallons for each inch of calliper. */
	private static final double YOUNG_LOW = 1;

	private static final double YOUNG_HIGH = 1.5;

	/** University of Minnesota Extension: years to grow in for each inch of calliper. */
	private static final double YEARS = 1.5;

	/** UC ANR, Yolo County: US gallons for each inch of calliper of a grown tree. */
	private static final double GROWN_LOW = 10;

	private static final double GROWN_HIGH = 15;

	private static final String MINNESOTA = "University of Minnesota Extension, Watering newly planted trees and shrubs";

	private static final String CALIFORNIA = "UC ANR Yolo County, watering deciduous landscape trees; the same in "
			+ "Tree water requirements, Urban Forestry Network";

	/**
	 * How long a tree takes to grow in.
	 * @param calliperMillimetres thickness of the trunk when it was planted, 5 to 3,000
	 * mm
	 * @return years; a year and a half for each inch
	 */
	public static double yearsToGrowIn(double calliperMillimetres) {
		return YEARS * inches(calliperMillimetres);
	}

	/**
	 * Water for a tree that is growing in.
	 * @param calliperMillimetres thickness of the trunk, 5 to 3,000 mm
	 * @param weeks weeks since it was planted, 0 or more
	 * @param count how many such trees, 1 or more
	 * @param litresPerMinute what the hose gives; null when not known
	 * @return the watering of one
	 * @throws BadInput when the trunk is out of its bounds
	 */
	public static TreeWatering young(double calliperMillimetres, long weeks, int count,
			@Nullable Double litresPerMinute) {
		double inches = inches(calliperMillimetres);
		String often = (weeks < 2) ? "daily" : (weeks < 12) ? "every two to three days" : "once a week";
		return of(calliperMillimetres, YOUNG_LOW * inches, YOUNG_HIGH * inches, count, litresPerMinute, often,
				"Over the root ball and a little beyond, %s while no rain does it.".formatted(often),
				new Explanation("Growing in",
						"about %s years".formatted(Quantity.figure(yearsToGrowIn(calliperMillimetres))),
						"1 to 1.5 gallons (3.8 to 5.7 litres) for each inch (25 mm) of trunk: daily for two weeks, every two "
								+ "to three days until week twelve, then weekly until it has grown in, a year and a half "
								+ "for each inch. Other extension services name up to five times as much.",
						MINNESOTA, List.of()));
	}

	/**
	 * Water for a tree that has grown in, in a dry spell.
	 * @param calliperMillimetres thickness of the trunk, 5 to 3,000 mm
	 * @param dryDays days without rain that counts, 0 or more; null when not known
	 * @param ground the soil
	 * @param count how many such trees, 1 or more
	 * @param litresPerMinute what the hose gives; null when not known
	 * @return the watering of one; of nothing before two weeks without rain
	 * @throws BadInput when the trunk is out of its bounds
	 */
	public static TreeWatering grown(double calliperMillimetres, @Nullable Integer dryDays, Ground ground, int count,
			@Nullable Double litresPerMinute) {
		double inches = inches(calliperMillimetres);
		Explanation why = new Explanation("A grown tree", "in a dry spell",
				"10 to 15 gallons (38 to 57 litres) for each inch (25 mm) of trunk, soaked in slowly under the crown and "
						+ "beyond its edge; on sand once a week in two halves, on loam every ten days to two weeks, on "
						+ "clay every two to three weeks. That it begins after two weeks without rain, and takes the "
						+ "higher figure from four weeks on, is from memory.",
				CALIFORNIA, List.of());
		if (dryDays != null && dryDays < 14) {
			String words = "Nothing yet: %s days without rain are no dry spell for a tree that has grown in."
				.formatted(dryDays);
			return new TreeWatering(0, 0, "",
					new Amount(words, Explanation.of("How much water", words).withSteps(List.of(why))));
		}
		boolean long4 = dryDays != null && dryDays >= 28;
		String often = switch (ground) {
			case SAND, SANDY_LOAM -> "once a week, in two halves some days apart";
			case LOAM, SILT_LOAM -> "every ten days to two weeks";
			case CLAY_LOAM, CLAY -> "every two to three weeks, in rounds with pauses";
		};
		double low = (long4 ? GROWN_HIGH : GROWN_LOW) * inches;
		return of(calliperMillimetres, low, GROWN_HIGH * inches, count, litresPerMinute, often,
				"Under the crown and beyond its edge, %s while it stays dry.".formatted(often), why);
	}

	private static TreeWatering of(double calliper, double lowGallons, double highGallons, int count,
			@Nullable Double flow, String often, String where, Explanation why) {
		double low = lowGallons * Quantity.LITRES_PER_GALLON;
		double high = highGallons * Quantity.LITRES_PER_GALLON;
		String each = (count == 1) ? "" : "For each of the %d: ".formatted(count);
		String words = each + (each.isEmpty() ? "About " : "about ") + range(low, high) + time(low, high, flow) + ". "
				+ where;
		List<Explanation> steps = new ArrayList<>();
		steps.add(Explanation.of("Trunk",
				"%s cm (%s in)".formatted(Quantity.figure(calliper / 10), Quantity.figure(inches(calliper)))));
		steps.add(why);
		if (count > 1) {
			steps.add(Explanation.of("All %d together".formatted(count), range(count * low, count * high)));
		}
		return new TreeWatering(low, high, often,
				new Amount(words, Explanation.of("How much water", words).withSteps(steps)));
	}

	static String range(double low, double high) {
		String least = Quantity.figure(low);
		String most = Quantity.figure(high);
		return least.equals(most) ? Quantity.litres(low) : "%s to %s litres (%s to %s gal)".formatted(least, most,
				Quantity.figure(low / Quantity.LITRES_PER_GALLON), Quantity.figure(high / Quantity.LITRES_PER_GALLON));
	}

	static String time(double low, double high, @Nullable Double flow) {
		if (flow == null) {
			return "";
		}
		long least = Math.max(1, Math.round(low / flow));
		long most = Math.max(least, Math.round(high / flow));
		return (most == 1) ? ", a minute of the hose"
				: ", %s minutes of the hose".formatted((least == most) ? String.valueOf(most) : least + " to " + most);
	}

	private static double inches(double calliperMillimetres) {
		if (!(calliperMillimetres >= 5 && calliperMillimetres <= 3000)) {
			throw new BadInput(
					"a trunk of %s mm is outside 5 to 3,000".formatted(NumberWords.fixed(calliperMillimetres, 1)),
					"calliper", "give the thickness of one trunk near the ground");
		}
		return calliperMillimetres / Quantity.MILLIMETRES_PER_INCH;
	}

}
