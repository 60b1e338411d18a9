package org.leafward.register;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What the ground of a site got, mm by day.
 *
 * @param whole waterings of the whole site
 * @param beds those of single plantings, which come on top
 */
public record WateredDepths(Map<LocalDate, Double> whole, Map<PlantingId, Map<LocalDate, Double>> beds) {

	/** Nothing was watered. */
	public static final WateredDepths NONE = new WateredDepths(Map.of(), Map.of());

	public WateredDepths {
		whole = Map.copyOf(whole);
		beds = Map.copyOf(beds);
	}

	/**
	 * What the bed of a planting got.
	 * @param planting the planting
	 * @return the waterings of the whole site and its own
	 */
	public Map<LocalDate, Double> of(PlantingId planting) {
		Map<LocalDate, Double> own = this.beds.get(planting);
		if (own == null) {
			return this.whole;
		}
		Map<LocalDate, Double> all = new HashMap<>(this.whole);
		own.forEach((day, depth) -> all.merge(day, depth, Double::sum));
		return all;
	}

	/**
	 * The waterings of some days.
	 * @param from first day
	 * @param to last day
	 * @return those between the two
	 */
	public WateredDepths between(LocalDate from, LocalDate to) {
		return new WateredDepths(between(this.whole, from, to),
				this.beds.entrySet()
					.stream()
					.map((bed) -> Map.entry(bed.getKey(), between(bed.getValue(), from, to)))
					.filter((bed) -> !bed.getValue().isEmpty())
					.collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
	}

	private static Map<LocalDate, Double> between(Map<LocalDate, Double> depths, LocalDate from, LocalDate to) {
		return depths.entrySet()
			.stream()
			.filter((one) -> !one.getKey().isBefore(from) && !one.getKey().isAfter(to))
			.collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
	}

	/**
	 * All of it in one text.
	 * @return the same for the same waterings, in whatever order they came
	 */
	public String inOrder() {
		Map<String, Map<LocalDate, Double>> sorted = new TreeMap<>();
		this.beds.forEach((planting, depths) -> sorted.put(planting.toString(), new TreeMap<>(depths)));
		return new TreeMap<>(this.whole) + " " + sorted;
	}

}
