package org.leafward.counties.core;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.measure.BadInput;

/**
 * What a county's calendar is asked for by. There is one address for each calendar, so
 * that shared caches keep it once.
 *
 * @param county code of the county
 * @param kinds codes of kinds of plants, 1 to {@value #MOST}, in the order of the drawers
 * @param speech language and units
 */
public record CountyAddress(String county, List<String> kinds, Speech speech) {

	/**
	 * Most kinds in one calendar: longer addresses are refused by some programs, and
	 * larger documents by others.
	 */
	public static final int MOST = 4;

	public CountyAddress {
		kinds = List.copyOf(kinds);
	}

	/**
	 * The address of some kinds.
	 * @param county code of the county
	 * @param wanted codes in any order; twice counts once
	 * @param known codes of all kinds in their order
	 * @param speech language and units
	 * @return the one address of that calendar
	 * @throws BadInput for none, too many or an unknown one
	 */
	public static CountyAddress of(String county, Collection<String> wanted, List<String> known, Speech speech) {
		List<String> strange = wanted.stream().filter((one) -> !known.contains(one)).toList();
		if (!strange.isEmpty()) {
			throw new BadInput("there are no plants of the kind '%s'".formatted(strange.get(0)), "kind",
					"choose among: " + String.join(", ", known));
		}
		List<String> kinds = known.stream().filter(wanted::contains).toList();
		if (kinds.isEmpty()) {
			throw new BadInput("no kind of plants is chosen", "kind", "tick one or more");
		}
		if (kinds.size() > MOST) {
			throw new BadInput("those are %d kinds".formatted(kinds.size()), "kind",
					"choose up to %d for one calendar, and make another one for the rest".formatted(MOST));
		}
		return new CountyAddress(county, kinds, speech);
	}

	/**
	 * Reads an address.
	 * @param county code of the county
	 * @param kinds codes with plus signs between
	 * @param speech language and units with a hyphen between, such as es-us; null for
	 * English with both units
	 * @param known codes of all kinds in their order
	 * @return what it stands for, whose {@link #path()} may be another one
	 * @throws BadInput for what can't be read
	 */
	public static CountyAddress read(String county, String kinds, @Nullable String speech, List<String> known) {
		return of(county, Arrays.asList(kinds.toLowerCase(Locale.ROOT).split("\\+")), known,
				(speech != null) ? speech(speech) : Speech.USUAL);
	}

	private static Speech speech(String code) {
		String[] parts = code.split("-", 2);
		return new Speech(Language.of("language", parts[0]), Units.of("units", (parts.length > 1) ? parts[1] : ""));
	}

	/**
	 * The kinds as they stand in the address.
	 * @return with plus signs between
	 */
	public String kindsCode() {
		return this.kinds.stream().collect(Collectors.joining("+"));
	}

	/**
	 * Language and units as they stand in the address.
	 * @return for example {@code es-us}
	 */
	public String speechCode() {
		return this.speech.language().code() + "-" + this.speech.units().code();
	}

	/**
	 * Where the calendar is.
	 * @return from the root; the usual speech isn't named
	 */
	public String path() {
		return "/c/" + this.county + "/" + kindsCode() + (this.speech.equals(Speech.USUAL) ? "" : "/" + speechCode())
				+ "/tasks.ics";
	}

	/** Whether it is one kind in the usual speech, which is always at hand. */
	public boolean usual() {
		return this.kinds.size() == 1 && this.speech.equals(Speech.USUAL);
	}

}
