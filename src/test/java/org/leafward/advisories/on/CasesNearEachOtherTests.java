package org.leafward.advisories.on;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Proposal;
import org.leafward.advisories.Proposals;
import org.leafward.lookalikes.Basis;
import org.leafward.lookalikes.CaseEnds;
import org.leafward.lookalikes.Cases;
import org.leafward.lookalikes.NewCase;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.regions.Regions;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.TestDatabase;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.beans.factory.annotation.Autowired;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * From a case that is closed to an advisory that is proposed, with all modules as they
 * are. Shares the context of {@code CasePagesTests}.
 */
@SpringBootTest(properties = { "leafward.operator-token=a-token-for-care-0123456789", "leafward.base-url=" })
@ActiveProfiles("demo")
@AutoConfigureMockMvc
@ContextConfiguration(initializers = TestDatabase.class)
class CasesNearEachOtherTests {

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	/** No other test closes a case with it. */
	private static final String CAUSE = "dutch-elm-disease";

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private Cases cases;

	@Autowired
	private CaseEnds ends;

	@Autowired
	private Proposals proposals;

	@Autowired
	private Regions regions;

	private void close(double latitude) {
		LocalDate today = LocalDate.ofInstant(Instant.now(), ZONE);
		PersonId person = this.people.join("Elmer Trial", UUID.randomUUID() + "@example.org", ZONE).id();
		Site site = this.register.addSite(person, new NewSite("Street", "Alder County",
				new GeoPoint(latitude, -91.61, 220), ZONE, SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE));
		SpeciesId elm = new SpeciesId("ulmus-americana");
		Planting planting = this.register
			.addPlantings(site.id(),
					List.of(new NewPlanting(elm, "elm", 1, LocalDate.of(1994, 4, 20), Placement.GROUND, false, false)))
			.get(0);
		var one = this.cases.open(person,
				new NewCase(site.id(), planting.id(), elm, "elm", "Alder County", ZONE, today.minusDays(3), null));
		this.ends.close(one.id(), CAUSE, Basis.HELP_DESK, "");
	}

	private List<Proposal> proposed() {
		return this.proposals.page(this.regions.counties().stream().map((one) -> one.name()).toList(), true, 0)
			.proposals()
			.stream()
			.filter((one) -> one.condition().title().english().contains("Dutch elm disease"))
			.toList();
	}

	@Test
	void threeCasesOfOneCauseNearEachOtherProposeAnAdvisoryOnce() {
		close(42.07);
		close(42.09);
		close(42.11);
		Awaitility.await().atMost(Duration.ofSeconds(20)).untilAsserted(() -> assertThat(proposed()).hasSize(1));
		Proposal proposal = proposed().get(0);
		assertThat(proposal.english().what()).contains("3 cases").contains("not a diagnosis");
		assertThat(proposal.condition().title().spanish()).containsIgnoringCase("grafiosis");
		assertThat(proposal.growth().plantings()).as("elms in its counties").isPositive();
		close(42.12);
		Awaitility.await()
			.during(Duration.ofSeconds(2))
			.atMost(Duration.ofSeconds(10))
			.untilAsserted(() -> assertThat(proposed()).as("within the cool-down").hasSize(1));
	}

}
