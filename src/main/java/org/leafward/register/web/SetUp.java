package org.leafward.register.web;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.leafward.measure.Findings;
import org.leafward.measure.GeoPoint;
import org.leafward.register.FoundPlace;
import org.leafward.register.GivenPlace;
import org.leafward.register.PlaceReader;

/**
 * All that was told so far about a site to be added. It travels in the form from step to
 * step and is kept nowhere; nothing is checked yet.
 */
final class SetUp {

	/** Longest text that is carried, characters; what is allowed is shorter. */
	private static final int LONGEST = 300;

	/** What counts where nobody knows the soil; it lies in the middle. */
	private static final String UNKNOWN_SOIL = "loam";

	/** What the step of the place asks for, beside what the next step asks for too. */
	private static final Set<String> PLACE = Set.of("county", "latitude", "longitude", "zone", "region");

	private static final Set<String> HEIGHT = Set.of("elevation", "unit");

	/** What the step of what it is like asks for, beside the height. */
	private static final Set<String> LIKE = Set.of("name", "soil", "sun", "wind", "lie", "nearWall", "inTown",
			"irrigation", "volunteers", "flow", "ball", "ribbon", "rubbed", "bucket", "seconds");

	private static final Set<String> TICKS = Set.of("nearWall", "inTown", "irrigation", "volunteers");

	/** What only the page with all details asks for. */
	private static final Set<String> OTHERS = Set.of("owner", "measuredOffsetCelsius");

	private final Map<String, String> told;

	private SetUp(Map<String, String> told) {
		this.told = Collections.unmodifiableMap(told);
	}

	/**
	 * What a form sends.
	 * @param parameters those of the request; others than its fields are passed over
	 * @return with every field there, cut to what pages can hold
	 */
	static SetUp of(Map<String, String> parameters) {
		Map<String, String> told = new LinkedHashMap<>();
		for (Set<String> some : List.of(PLACE, HEIGHT, LIKE, OTHERS)) {
			some.stream().sorted().forEach((field) -> told.put(field, cut(parameters.getOrDefault(field, ""))));
		}
		// The page with all details has the height in metres.
		String metres = cut(parameters.getOrDefault("elevationMetres", ""));
		if (!metres.isEmpty()) {
			told.put("elevation", metres);
			told.put("unit", "m");
		}
		return new SetUp(told);
	}

	private static String cut(String text) {
		return text.substring(0, Math.min(text.length(), LONGEST)).strip();
	}

	/**
	 * Every field with what was told, for a page.
	 * @return texts, empty where nothing was, and for what is ticked true or false
	 */
	Map<String, Object> fields() {
		Map<String, Object> fields = new LinkedHashMap<>(this.told);
		TICKS.forEach((field) -> fields.put(field, is(field)));
		return fields;
	}

	String get(String field) {
		return this.told.getOrDefault(field, "");
	}

	SetUp with(String field, String value) {
		Map<String, String> other = new LinkedHashMap<>(this.told);
		other.put(field, value);
		return new SetUp(other);
	}

	private SetUp with(Map<String, String> values) {
		Map<String, String> other = new LinkedHashMap<>(this.told);
		other.putAll(values);
		return new SetUp(other);
	}

	/** The place as the first step gives it. */
	GivenPlace place() {
		return new GivenPlace(get("county"), get("latitude"), get("longitude"), get("elevation"), get("unit"),
				get("zone"));
	}

	/** With what somebody pointed at, so that it isn't lost when more has to be told. */
	SetUp pointing(GivenPlace place) {
		return with(Map.of("county", "", "latitude", String.valueOf(place.latitude()), "longitude",
				String.valueOf(place.longitude()), "elevation", "", "unit", "m", "zone", ""));
	}

	/** With the place that was found: from here on the county is named. */
	SetUp at(FoundPlace place) {
		GeoPoint point = place.point();
		return with(Map.of("county", place.county(), "region", place.region(), "latitude",
				String.valueOf(point.latitude()), "longitude", String.valueOf(point.longitude()), "elevation",
				SizeRequest.written(point.elevationMetres()), "unit", "m", "zone", place.zone().getId()));
	}

	/** What goes along unseen in the step of the place. */
	Map<String, List<String>> besidePlace() {
		return beside(LIKE, OTHERS);
	}

	/** The same in the step of what it is like. */
	Map<String, List<String>> besideLike() {
		return beside(PLACE, OTHERS);
	}

	/** The same on the page with all details: what was found by hand. */
	Map<String, List<String>> besideAll() {
		return beside(Set.of("ball", "ribbon", "rubbed", "bucket", "seconds"));
	}

	@SafeVarargs
	private Map<String, List<String>> beside(Set<String>... fields) {
		Map<String, List<String>> beside = new LinkedHashMap<>();
		this.told.forEach((field, value) -> {
			if (!value.isEmpty() && Arrays.stream(fields).anyMatch((some) -> some.contains(field))) {
				beside.put(field, List.of(value));
			}
		});
		return beside;
	}

	/** The answers of the tests by hand. */
	HandTests tests() {
		return new HandTests(get("ball"), get("ribbon"), get("rubbed"), get("bucket"), get("seconds"));
	}

	/**
	 * With soil and flow worked out where the tests by hand shall tell them.
	 * @return ready for {@link #request}
	 * @throws org.leafward.measure.BadInput by field, when an answer is missing or can't
	 * be used
	 */
	SetUp worked() {
		Findings all = new Findings();
		Supplier<String> soil = all.read(this::soil);
		Supplier<String> flow = all.read(this::flow);
		return all.give(() -> with(Map.of("soil", soil.get(), "flow", flow.get())));
	}

	/**
	 * What the tests by hand told is left to them again, so that another answer counts.
	 * @return without the soil and the flow that they still tell
	 */
	SetUp beforeTests() {
		HandTests tests = tests();
		boolean felt = HandTests.ifTold(tests::soil)
			.map((found) -> SiteAnswer.word(found.kept()))
			.filter(get("soil")::equals)
			.isPresent();
		boolean measured = HandTests.ifTold(tests::flow)
			.map(SizeRequest::written)
			.filter(get("flow")::equals)
			.isPresent();
		return with(Map.of("soil", felt ? HandTests.BY_FEEL : get("soil"), "flow", measured ? "" : get("flow")));
	}

	private String soil() {
		return tests().soil(get("soil"))
			.map(SiteAnswer::word)
			.orElse(get("soil").isEmpty() ? UNKNOWN_SOIL : get("soil"));
	}

	private String flow() {
		return tests().flow(get("flow"));
	}

	/**
	 * The same as a site, in metres.
	 * @return nothing of it is checked but the number of the height
	 * @throws org.leafward.measure.BadInput at {@code elevation} when it is no number
	 */
	SiteRequest request() {
		String metres = PlaceReader.height(get("elevation"), get("unit")).map(SizeRequest::written).orElse("");
		return new SiteRequest(get("owner"), get("name"), get("county"), get("latitude"), get("longitude"), metres,
				get("zone"), get("soil"), get("sun"), get("wind"), get("lie"), is("nearWall"), is("inTown"),
				get("measuredOffsetCelsius"), get("region"), is("irrigation"), is("volunteers"), get("flow"));
	}

	private boolean is(String field) {
		return Boolean.parseBoolean(get(field));
	}

}
