package org.leafward.advisories.core.cases;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.NearCase;
import org.leafward.measure.GeoPoint;

import static org.assertj.core.api.Assertions.assertThat;

/** Cases near each other; the numbers are ours. */
class CaseClustersTests {

	private static final LocalDate TODAY = LocalDate.of(2026, 7, 20);

	private static NearCase at(String id, String cause, double latitude, int daysAgo) {
		return new NearCase(id, cause, new Bilingual(cause, cause), "quercus-rubra", new GeoPoint(latitude, -90, 200),
				TODAY.minusDays(daysAgo));
	}

	@Test
	void threeNearEachOther() {
		List<CaseClusters.Cluster> found = CaseClusters.of(List.of(at("3", "scorch", 41.3, 1),
				at("1", "scorch", 41.0, 9), at("2", "scorch", 41.2, 5), at("4", "drought", 41.1, 2)), TODAY);
		assertThat(found).singleElement()
			.satisfies((one) -> assertThat(one.cases()).extracting(NearCase::id).containsExactly("1", "2", "3"));
	}

	@Test
	void fewFarOldOrTheSameAreNone() {
		assertThat(CaseClusters.of(List.of(at("1", "scorch", 41.0, 1), at("2", "scorch", 41.1, 1)), TODAY)).isEmpty();
		assertThat(CaseClusters
			.of(List.of(at("1", "scorch", 41.0, 1), at("2", "scorch", 41.1, 1), at("3", "scorch", 41.5, 1)), TODAY))
			.as("44 km from the next")
			.isEmpty();
		assertThat(CaseClusters
			.of(List.of(at("1", "scorch", 41.0, 1), at("2", "scorch", 41.1, 1), at("3", "scorch", 41.1, 31)), TODAY))
			.as("a month ago")
			.isEmpty();
		assertThat(CaseClusters
			.of(List.of(at("1", "scorch", 41.0, 1), at("2", "scorch", 41.1, 1), at("2", "scorch", 41.1, 1)), TODAY))
			.as("twice")
			.isEmpty();
		assertThat(CaseClusters
			.of(List.of(at("1", "scorch", 41.0, 1), at("2", "scorch", 41.1, 1), at("3", "scorch", 41.1, -1)), TODAY))
			.as("tomorrow")
			.isEmpty();
	}

}
