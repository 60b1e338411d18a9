package org.leafward.lookalikes.draw;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The drawings beside answers: leaves, borders, crowns and shoots. Living tissue is pale,
 * dead tissue dark and hatched, yellow tissue dotted, so that they read without colour.
 * They say no more than the words beside them and are hidden from those who hear the
 * page. Pure.
 */
public final class Drawings {

	private static final Map<String, String> ALL = all();

	private Drawings() {
	}

	/**
	 * The drawing of an answer.
	 * @param evidence the answer's identifier in the key
	 * @return inline SVG; empty where there is nothing to draw
	 */
	public static Optional<String> of(String evidence) {
		return Optional.ofNullable(ALL.get(evidence));
	}

	private static Map<String, String> all() {
		Map<String, Supplier<String>> drawn = new LinkedHashMap<>();
		for (LeafDrawing.Pattern one : LeafDrawing.Pattern.values()) {
			drawn.put(one.evidence(), () -> new LeafDrawing(one).svg());
		}
		for (BorderDrawing.Border one : BorderDrawing.Border.values()) {
			drawn.put(one.evidence(), () -> new BorderDrawing(one).svg());
		}
		for (CrownDrawing.Part one : CrownDrawing.Part.values()) {
			drawn.put(one.evidence(), () -> new CrownDrawing(one).svg());
		}
		for (ShootDrawing.Leaves one : ShootDrawing.Leaves.values()) {
			drawn.put(one.evidence(), () -> new ShootDrawing(one).svg());
		}
		Map<String, String> all = new LinkedHashMap<>();
		drawn.forEach((evidence, drawing) -> all.put(evidence, drawing.get()));
		return Map.copyOf(all);
	}

}
