package org.leafward.counties.core;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.language.Language;
import org.leafward.language.Speech;
import org.leafward.language.Units;
import org.leafward.measure.BadInput;
import org.leafward.quick.core.PlantKinds;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** One address for each calendar. */
class CountyAddressTests {

	private static final int MOST_CHARACTERS = 116;

	private static final List<String> KNOWN = List.of("vegetables", "bulbs", "lawns", "roses", "oaks", "maples");

	@ParameterizedTest
	@CsvSource({ "roses, , /c/us-ia-alder-county/roses/tasks.ics",
			"roses+bulbs, , /c/us-ia-alder-county/bulbs+roses/tasks.ics",
			"ROSES+roses, , /c/us-ia-alder-county/roses/tasks.ics",
			"roses, en-both, /c/us-ia-alder-county/roses/tasks.ics",
			"lawns+roses, es-us, /c/us-ia-alder-county/lawns+roses/es-us/tasks.ics",
			"roses, EN-metric, /c/us-ia-alder-county/roses/en-metric/tasks.ics" })
	void readsWhatIsNearlyAnAddressAsTheOneAddress(String kinds, String speech, String path) {
		assertThat(CountyAddress.read("us-ia-alder-county", kinds, speech, KNOWN).path()).isEqualTo(path);
	}

	@Test
	void anAddressReadIsTheSameAddress() {
		CountyAddress made = CountyAddress.of("a", List.of("oaks", "bulbs"), KNOWN,
				new Speech(Language.SPANISH, Units.METRIC));
		assertThat(CountyAddress.read("a", made.kindsCode(), made.speechCode(), KNOWN)).isEqualTo(made);
		assertThat(made.usual()).isFalse();
		assertThat(CountyAddress.of("a", List.of("oaks"), KNOWN, Speech.USUAL).usual()).isTrue();
	}

	@ParameterizedTest
	@CsvSource({ "tulips, , tulips", "'', , ''", "roses++bulbs, , ''", "roses, fr-us, fr", "roses, en, units",
			"roses, en-feet, feet", "vegetables+bulbs+lawns+roses+oaks+maples, , 6 kinds" })
	void refusesWhatItCannotRead(String kinds, String speech, String word) {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> CountyAddress.read("a", kinds, speech, KNOWN))
			.satisfies((refused) -> assertThat(refused.what()).contains(word))
			.satisfies((refused) -> assertThat(refused.mend()).isNotBlank());
	}

	/** One client shortens longer addresses: at most 116 characters were reported. */
	@Test
	void theLongestKindsFitIntoAnAddressThatProgramsTake() {
		List<String> groups = List.of("vegetable", "fruit-tree", "strawberry", "annual", "spring-bulb", "perennial",
				"turf", "rose", "hydrangea-old-wood", "rhododendron", "boxwood", "spring-flowering-shrub",
				"summer-flowering-shrub", "needled-evergreen", "houseplant", "broadleaf-evergreen", "flowering-tree",
				"oak", "maple", "deciduous-shade-tree", "none");
		List<String> codes = PlantKinds
			.of(groups.stream()
				.map((group) -> new Species(new SpeciesId(group), group, group, List.of(), List.of(group),
						java.util.Set.of()))
				.toList())
			.stream()
			.map(PlantKinds.Kind::code)
			.toList();
		assertThat(codes).hasSize(21).doesNotHaveDuplicates().allMatch((code) -> code.matches("[a-z-]+"));
		List<String> longest = codes.stream()
			.sorted(java.util.Comparator.comparing(String::length).reversed())
			.limit(CountyAddress.MOST)
			.toList();
		String path = CountyAddress.of("us-ia-alder-county", longest, codes, new Speech(Language.SPANISH, Units.METRIC))
			.path();
		// Whoever ticks the longest of them has few other words left for the host.
		assertThat("https://a.example" + path).hasSizeLessThanOrEqualTo(MOST_CHARACTERS);
	}

}
