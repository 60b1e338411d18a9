package org.leafward.demo;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.register.NewSite;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.mock.env.MockEnvironment;

import static org.assertj.core.api.Assertions.assertThat;

/** The invented places fit together. */
class DemoRegionTests {

	private static Regions regions() {
		MockEnvironment demo = new MockEnvironment();
		demo.setActiveProfiles("demo");
		return new Regions(new KnowledgeFiles(""), new KnowledgeReader(), demo);
	}

	@Test
	void everySiteLiesInItsOwnCounty() {
		List<NewSite> sites = DemoRegion.people(LocalDate.of(2027, 5, 16))
			.stream()
			.flatMap((person) -> person.sites().stream())
			.map(DemoRegion.DemoSite::site)
			.toList();
		assertThat(sites).hasSize(6).allSatisfy((site) -> {
			County county = regions().countyAt(site.point()).orElseThrow();
			assertThat(county.name()).isEqualTo(site.county());
			assertThat(county.zone()).isEqualTo(site.zone());
			assertThat(county.region()).isEqualTo(site.region());
		});
	}

	@Test
	void everyStationLiesInTheRegion() {
		assertThat(DemoRegion.stations())
			.allSatisfy((one) -> assertThat(regions().countyAt(one.station().point())).isPresent());
	}

}
