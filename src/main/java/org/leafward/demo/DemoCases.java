package org.leafward.demo;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.lookalikes.Basis;
import org.leafward.lookalikes.CaseDesk;
import org.leafward.lookalikes.CaseEnds;
import org.leafward.lookalikes.CaseId;
import org.leafward.lookalikes.Cases;
import org.leafward.lookalikes.NewCase;
import org.leafward.lookalikes.core.Answers;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/**
 * Four plants of the invented region that look wrong: one that the help desk was asked
 * about, one with a sample at the laboratory, one that is closed, and one by the road.
 * All of it is made up.
 */
@Component
@Profile("demo")
class DemoCases {

	private static final String HELPER = "odile.marsh@example.org";

	private final Cases cases;

	private final CaseDesk desk;

	private final CaseEnds ends;

	private final Register register;

	private final People people;

	private final Catalogue catalogue;

	DemoCases(Cases cases, CaseDesk desk, CaseEnds ends, Register register, People people, Catalogue catalogue) {
		this.cases = cases;
		this.desk = desk;
		this.ends = ends;
		this.register = register;
		this.people = people;
		this.catalogue = catalogue;
	}

	/**
	 * Opens the cases.
	 * @param today the day
	 */
	void open(LocalDate today) {
		LocalDate march = latest(today, Month.MARCH, 14);
		CaseId hedge = begin("Farrow house", "porch rhododendrons", march);
		answers(hedge,
				Map.of("when", Set.of("seen-late-winter"), "where-in-leaf", Set.of("leaf-edge-inward"),
						"where-in-crown", Set.of("crown-above-snow", "crown-windy-or-sunny-side"), "buds",
						Set.of("buds-alive"), "neighbors", Set.of(Answers.NONE)));
		CaseId oaks = begin("Millrace Park", "pin oaks at the pond", latest(today, Month.AUGUST, 9));
		answers(oaks,
				Map.of("when", Set.of("seen-high-summer"), "where-in-leaf", Set.of("leaf-edge-inward"), "border",
						Set.of("border-red-brown"), "where-in-crown", Set.of("crown-branch-then-more"), "which-leaves",
						Set.of("oldest-leaves-first"), "again", Set.of("every-year-and-more"), "watering",
						Set.of("water-no-change")));
		this.ends.sampled(oaks, latest(today, Month.SEPTEMBER, 7));
		CaseId hollies = begin("Tamsin Library garden", "hollies at the door", latest(today, Month.APRIL, 2));
		answers(hollies, Map.of("when", Set.of("seen-late-winter"), "where-in-leaf", Set.of("leaf-tips-burnt"),
				"where-in-crown", Set.of("crown-windy-or-sunny-side")));
		this.desk.ask(hollies);
		owner(hollies).ifPresent((owner) -> this.desk.write(hollies, owner.id(), false,
				"Only the side toward the street. We don't salt the steps ourselves."));
		this.people.withAddress(HELPER).map(Person::id).ifPresent((helper) -> {
			this.desk.assign(hollies, helper);
			this.desk.write(hollies, helper, true,
					"Does the browning fade with the distance from the street? Then salt spray is likelier than wind. Cut a few buds: green inside is a good sign either way. Please leave the dead-looking twigs on until you see where it sprouts.");
		});
		CaseId junipers = begin("Quill Harbor promenade", "junipers along the road", latest(today, Month.MARCH, 28));
		answers(junipers, Map.of("when", Set.of("seen-late-winter"), "where-in-crown", Set.of("crown-road-side"),
				"ground", Set.of("salt-near"), "neighbors", Set.of("other-kinds-too")));
		this.desk.ask(junipers);
		this.ends.close(junipers, "salt-spray", Basis.HELP_DESK, "");
	}

	private CaseId begin(String place, String label, LocalDate seen) {
		Site site = this.register.sites(0, 100)
			.stream()
			.filter((one) -> one.name().equals(place))
			.findFirst()
			.orElseThrow();
		Planting planting = this.register.plantingsOf(site.id())
			.stream()
			.filter((one) -> one.label().equals(label))
			.findFirst()
			.orElseThrow();
		String species = this.catalogue.find(planting.species()).map(Species::commonName).orElse(label);
		return this.cases
			.open(site.owner(),
					new NewCase(site.id(), planting.id(), planting.species(), "%s (%s)".formatted(label, species),
							site.county(), site.zone(), seen, null))
			.id();
	}

	/** In the order in which the key asks them. */
	private void answers(CaseId id, Map<String, Set<String>> given) {
		List<String> order = List.of("when", "where-in-leaf", "border", "where-in-crown", "which-leaves", "neighbors",
				"ground", "again", "watering", "buds");
		order.stream()
			.filter(given::containsKey)
			.forEach((question) -> this.cases.answer(id, question, given.getOrDefault(question, Set.of())));
	}

	private Optional<Person> owner(CaseId id) {
		PersonId owner = this.cases.require(id).person();
		return this.people.find(owner);
	}

	/** The last such day that is not to come. */
	private static LocalDate latest(LocalDate today, Month month, int day) {
		LocalDate thisYear = LocalDate.of(today.getYear(), month, day);
		return thisYear.isAfter(today) ? thisYear.minusYears(1) : thisYear;
	}

}
