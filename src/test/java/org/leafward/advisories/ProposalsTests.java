package org.leafward.advisories;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.conditions.Conditions;
import org.leafward.advisories.store.ProposalTable;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.PlaceNowReader;
import org.leafward.climate.SurroundingsReader;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.language.Phrasebooks;
import org.leafward.measure.BadInput;
import org.leafward.plants.Catalogue;
import org.leafward.plants.SpeciesId;
import org.leafward.regions.County;
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
import org.leafward.support.PublicDemoServer;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** The watch over the invented region, in the context of the county calendars. */
@PublicDemoServer
class ProposalsTests {

	private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

	private static final Decider ODILE = new Decider("Odile Marsh", new UUID(0, 5));

	@Autowired
	private Proposals proposals;

	@Autowired
	private Thresholds thresholds;

	@Autowired
	private Growers growers;

	@Autowired
	private Regions regions;

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private StoredProposals stored;

	@Autowired
	private ProposalTable table;

	@Autowired
	private SurroundingsReader surroundings;

	@Autowired
	private PlaceNowReader places;

	@Autowired
	private LocalClimate climate;

	@Autowired
	private Phrasebooks books;

	@Autowired
	private Catalogue catalogue;

	@Autowired
	private Clock clock;

	@Autowired
	private JdbcClient database;

	private static NewPlanting planting(String species) {
		return new NewPlanting(new SpeciesId(species), species, 1, LocalDate.of(2020, 4, 20), Placement.GROUND, false,
				false);
	}

	private Site site(PersonId owner, County county) {
		return this.register.addSite(owner, new NewSite("Garden", county.name().toUpperCase(), county.somewhere(),
				CHICAGO, SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE));
	}

	/** What is counted follows the register, whatever is done to it. */
	@Test
	void growersAreCounted() {
		County county = this.regions.counties().get(0);
		PlantChoice oaks = new PlantChoice(Set.of("oak"), Set.of(), Set.of());
		Growth before = this.growers.count(List.of(county.code()), oaks);
		PersonId person = this.people.join("Greta Holm", "greta.holm@example.org", CHICAGO).id();
		Site first = site(person, county);
		Site second = site(person, county);
		List<Planting> oak = this.register.addPlantings(first.id(),
				List.of(planting("quercus-rubra"), planting("quercus-rubra"), planting("syringa-vulgaris")));
		this.register.addPlantings(second.id(), List.of(planting("quercus-alba")));
		Growth after = this.growers.count(List.of(county.code(), "nowhere"), oaks);
		assertThat(after.people() - before.people()).isEqualTo(1);
		assertThat(after.sites() - before.sites()).isEqualTo(2);
		assertThat(after.plantings() - before.plantings()).isEqualTo(3);
		assertThat(after.groups()).anyMatch((one) -> one.group().equals("oak") && one.plantings() == after.plantings());
		assertThat(this.growers.people(List.of(county.code()), oaks, null, 10_000)).contains(person)
			.doesNotContain(PersonId.SERVER)
			.doesNotHaveDuplicates();
		assertThat(this.growers.people(List.of(county.code()), oaks, person, 10_000)).doesNotContain(person);
		this.register.removePlanting(oak.get(0).id());
		assertThat(this.growers.count(List.of(county.code()), oaks).plantings() - before.plantings()).isEqualTo(2);
		assertThat(this.database.sql("""
				select count(*) from register.site s left join register.site_plants p on p.site = s.id
				where p.site is null or cardinality(p.plants) <> (select count(*) from register.planting g
					where g.site = s.id)""").query(Long.class).single()).isZero();
	}

	/**
	 * A condition that holds wherever yesterday's rain is known, beside the usual ones.
	 */
	private Proposing withOneThatHolds(Path folder) throws IOException {
		Path file = Files.createDirectories(folder.resolve("advisories")).resolve("always.yaml");
		Files.writeString(file,
				"""
						title: A test
						conditions:
						  - condition: always
						    title: {en: Always, es: Siempre}
						    why: So that something is proposed on any day.
						    alert: {category: Met, urgency: Expected, severity: Minor, certainty: Likely, response: [Prepare]}
						    thresholds:
						      rain: {label: {en: Rain, es: Lluvia}, value: 900, unit: mm, lowest: 0, highest: 900, source: made up}
						      cool-down: {label: {en: Not again for, es: No de nuevo durante}, value: 7, unit: days, lowest: 1, highest: 60, source: made up}
						    when:
						      - {figure: rain-past, days: 3, at-most: rain}
						    lasts: 2
						    text:
						      en: {headline: 'It rained', what: '{rain-past} fell in {where}.', impacts: None there., to-do: Nothing at all.}
						      es: {headline: 'Llovió', what: 'Cayeron {rain-past} en {where}.', impacts: Ninguno., to-do: Nada.}
						    sources: [made up]
						""");
		Conditions conditions = new Conditions(new KnowledgeFiles(folder.toString()), new KnowledgeReader(),
				this.catalogue);
		return new Proposing(this.regions, conditions, this.table, this.thresholds, this.surroundings, this.places,
				this.climate, this.growers, this.stored, this.books, this.clock);
	}

	@Test
	void aProposalComesOnceWhicheverNodeLooks(@TempDir Path folder) throws Exception {
		Proposing watch = withOneThatHolds(folder);
		this.database.sql("delete from advisories.cool_down where condition = 'always'").update();
		ExecutorService nodes = Executors.newFixedThreadPool(2);
		Callable<List<ProposalId>> look = watch::propose;
		List<Future<List<ProposalId>>> both = nodes.invokeAll(List.of(look, look));
		List<ProposalId> made = new ArrayList<>(both.get(0).get());
		made.addAll(both.get(1).get());
		nodes.shutdown();
		List<Proposal> always = made.stream()
			.map((one) -> this.proposals.find(one).orElseThrow())
			.filter((one) -> one.condition().code().equals("always"))
			.toList();
		assertThat(always.stream().flatMap((one) -> one.counties().stream()).map(AffectedCounty::code))
			.as("each county once, with its region")
			.containsExactlyInAnyOrderElementsOf(this.regions.counties().stream().map(County::code).toList());
		assertThat(always.stream().flatMap((one) -> one.counties().stream()).map(AffectedCounty::region).distinct())
			.hasSize(always.size());
		assertThat(always).allSatisfy((one) -> {
			assertThat(one.english().what()).matches("\\d+ mm \\([\\d.]+ in\\)( to .*)? fell in .*County.*\\.");
			assertThat(one.growth().counties()).hasSameSizeAs(one.counties());
			assertThat(one.counties().get(0).figures()).extracting(Figure::code).containsExactly("rain-past");
		});
		assertThat(watch.propose()).as("within the cool-down").isEmpty();
		this.database.sql("update advisories.cool_down set again_from = current_date - 2 where condition = 'always'")
			.update();
		assertThat(watch.propose()).as("after it").hasSameSizeAs(always);
	}

	private static NearCase near(String id, County county) {
		return new NearCase(id, "bacterial-scorch", new Bilingual("bacterial leaf scorch", "quemadura bacteriana"),
				"quercus-rubra", county.somewhere(), LocalDate.now(CHICAGO).minusDays(2));
	}

	@Test
	void casesNearEachOtherAreProposedAndDecidedByCounty() {
		County county = this.regions.counties().get(0);
		List<NearCase> cases = List.of(near("1", county), near("2", county), near("3", county));
		assertThat(this.proposals.fromCases(cases.subList(0, 2))).isEmpty();
		List<ProposalId> made = this.proposals.fromCases(cases);
		assertThat(made).hasSize(1);
		assertThat(this.proposals.fromCases(cases)).as("again").isEmpty();
		Proposal proposal = this.proposals.find(made.get(0)).orElseThrow();
		assertThat(proposal.condition().title().english()).contains("bacterial leaf scorch");
		assertThat(proposal.english().what()).contains("3 cases").contains("not a diagnosis");
		assertThat(proposal.spanish().what()).contains("3 casos");
		assertThat(proposal.counties()).singleElement().extracting(AffectedCounty::code).isEqualTo(county.code());
		assertThat(this.proposals.page(List.of(county.name().toLowerCase()), true, 0).proposals()).contains(proposal);
		assertThat(this.proposals.page(List.of("Elsewhere"), true, 0).proposals()).doesNotContain(proposal);
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.proposals.dismiss(proposal.id(), List.of("nowhere"), ODILE, ""));
		this.proposals.dismiss(proposal.id(), List.of(county.code()), ODILE, "Looked at them.");
		Proposal now = this.proposals.find(proposal.id()).orElseThrow();
		assertThat(now.open()).isFalse();
		this.proposals.composed(proposal.id(), List.of(county.code()), new UUID(0, 9), ODILE);
		assertThat(this.proposals.find(proposal.id()).orElseThrow().counties().get(0).standing())
			.as("who decides first decides")
			.isEqualTo(AffectedCounty.Standing.DISMISSED);
		assertThat(this.proposals.decided(proposal.id())).singleElement()
			.satisfies((one) -> assertThat(one.by() + one.why()).isEqualTo("Odile MarshLooked at them."));
		assertThat(this.proposals.page(List.of(county.name()), true, 0).proposals()).doesNotContain(now);
	}

	@Test
	void limitsAreKeptWithWhoAndWhen() {
		County county = this.regions.counties().get(0);
		this.thresholds.put("hot-dry-wind", "high", county.code(), 88.0, "Cooler here.", ODILE);
		this.thresholds.put("hot-dry-wind", "high", county.region(), 91.0, "", ODILE);
		assertThat(this.thresholds.set("hot-dry-wind")).hasSize(2);
		this.thresholds.put("hot-dry-wind", "high", county.code(), null, "", ODILE);
		assertThat(this.thresholds.set("hot-dry-wind")).singleElement()
			.satisfies((one) -> assertThat(one.scope()).isEqualTo(county.region()));
		assertThat(this.thresholds.history("hot-dry-wind", 10)).hasSize(3)
			.allMatch((one) -> one.by().equals("Odile Marsh"));
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.thresholds.put("hot-dry-wind", "high", county.code(), 200.0, "", ODILE));
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.thresholds.put("hot-dry-wind", "high", "nowhere", 88.0, "", ODILE));
		this.thresholds.put("hot-dry-wind", "high", county.region(), null, "", ODILE);
	}

}
