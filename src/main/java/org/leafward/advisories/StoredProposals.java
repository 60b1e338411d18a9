package org.leafward.advisories;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.core.cases.CaseClusters;
import org.leafward.advisories.core.cases.CaseClusters.Cluster;
import org.leafward.advisories.core.cases.CaseDraft;
import org.leafward.advisories.store.ProposalTable;
import org.leafward.language.Language;
import org.leafward.language.Phrasebooks;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** Proposals as they are stored. */
@Service
class StoredProposals implements Proposals {

	/** Code of the condition of near cases. */
	static final String NEAR_CASES = "near-cases";

	private static final int CASES_COOL_DOWN = 21;

	private static final int LONGEST_WHY = 300;

	private final ProposalTable table;

	private final Growers growers;

	private final Regions regions;

	private final Phrasebooks books;

	private final TransactionTemplate transaction;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	StoredProposals(ProposalTable table, Growers growers, Regions regions, Phrasebooks books,
			TransactionTemplate transaction, ApplicationEventPublisher events, Clock clock) {
		this.table = table;
		this.growers = growers;
		this.regions = regions;
		this.books = books;
		this.transaction = transaction;
		this.events = events;
		this.clock = clock;
	}

	@Override
	public ProposalPage page(@Nullable Collection<String> counties, boolean openOnly, int page) {
		return this.table.page(counties, openOnly, Given.page(page));
	}

	@Override
	public Optional<Proposal> find(ProposalId id) {
		return this.table.find(id);
	}

	@Override
	public List<Decided> decided(ProposalId id) {
		return this.table.decided(id);
	}

	@Override
	public void dismiss(ProposalId id, Collection<String> counties, Decider by, String why) {
		Proposal proposal = require(id);
		if (proposal.counties().stream().noneMatch((one) -> counties.contains(one.code()))) {
			throw new BadInput("the proposal is about none of these counties", "county", "choose one that it names");
		}
		String line = why.isBlank() ? "" : Given.line("why", why.strip());
		if (line.length() > LONGEST_WHY) {
			throw new BadInput("the reason has %d characters".formatted(line.length()), "why",
					"shorten it to %d".formatted(LONGEST_WHY));
		}
		this.table.decide(id, counties,
				new ProposalTable.Decision(AffectedCounty.Standing.DISMISSED, by, now(), line, null));
	}

	@Override
	public void composed(ProposalId id, Collection<String> counties, UUID advisory, Decider by) {
		require(id);
		this.table.decide(id, counties,
				new ProposalTable.Decision(AffectedCounty.Standing.COMPOSED, by, now(), "", advisory));
	}

	private Proposal require(ProposalId id) {
		return find(id).orElseThrow(() -> new NotThere("There is no proposal %s.".formatted(id)));
	}

	private Instant now() {
		return this.clock.instant().truncatedTo(ChronoUnit.MILLIS);
	}

	/** What a proposal is made of, once it is known for which counties it is free. */
	@FunctionalInterface
	interface Maker {

		/**
		 * Makes the proposal.
		 * @param id its identifier
		 * @param counties codes of the counties that it is free for, at least one
		 * @param at when
		 * @return the proposal
		 */
		Proposal make(ProposalId id, Set<String> counties, Instant at);

	}

	/**
	 * A county for which something is to be proposed.
	 *
	 * @param code code of the county
	 * @param today the day there
	 * @param coolDown days until it may be proposed again
	 */
	record Wanted(String code, LocalDate today, int coolDown) {
	}

	/**
	 * Makes a proposal for those of some counties where it doesn't cool down. Of two
	 * nodes that come together one makes it.
	 * @param key what cools down
	 * @param wanted the counties, in one order on all nodes
	 * @param maker makes it
	 * @return its identifier; empty when it cools down everywhere
	 */
	Optional<ProposalId> propose(String key, List<Wanted> wanted, Maker maker) {
		return this.transaction.execute((status) -> {
			ProposalId id = new ProposalId(UUID.randomUUID());
			Set<String> free = wanted.stream()
				.sorted(Comparator.comparing(Wanted::code))
				.filter((one) -> this.table.claim(key, one.code(), id, one.today(),
						one.today().plusDays(one.coolDown())))
				.map(Wanted::code)
				.collect(Collectors.toSet());
			if (free.isEmpty()) {
				return Optional.empty();
			}
			Proposal proposal = maker.make(id, free, now());
			this.table.add(proposal);
			this.events.publishEvent(new AdvisoryProposed(id.value(), proposal.condition().code(), free));
			return Optional.of(id);
		});
	}

	@Override
	public List<ProposalId> fromCases(Collection<NearCase> cases) {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC);
		List<ProposalId> made = new ArrayList<>();
		for (Cluster cluster : CaseClusters.of(cases, today)) {
			Map<String, County> counties = new TreeMap<>();
			cluster.cases()
				.forEach((one) -> this.regions.countyAt(one.at())
					.ifPresent((county) -> counties.put(county.code(), county)));
			if (!counties.isEmpty()) {
				propose(NEAR_CASES + ":" + cluster.cause(),
						counties.keySet().stream().map((code) -> new Wanted(code, today, CASES_COOL_DOWN)).toList(),
						(id, free, at) -> ofCases(id, cluster,
								counties.values().stream().filter((one) -> free.contains(one.code())).toList(), today,
								at))
					.ifPresent(made::add);
			}
		}
		return made;
	}

	private Proposal ofCases(ProposalId id, Cluster cluster, List<County> counties, LocalDate today, Instant at) {
		Bilingual cause = cluster.cases().get(0).causeWords();
		Set<String> species = cluster.cases().stream().map(NearCase::species).collect(Collectors.toSet());
		PlantChoice concerns = new PlantChoice(Set.of(), Set.of(), species);
		Condition condition = new Condition(NEAR_CASES,
				new Bilingual("Cases near each other: " + cause.english(),
						"Casos cercanos entre sí: " + cause.spanish()),
				new AlertDefaults("Env", "Future", "Minor", "Possible", Set.of("Monitor", "Assess")), concerns);
		DayWindow days = new DayWindow(today, today.plusDays(CaseDraft.LASTS - 1L));
		List<String> names = counties.stream().map(County::name).sorted().toList();
		Figure count = new Figure("cases", new Bilingual("Cases of the last 30 days", "Casos de los últimos 30 días"),
				cluster.cases().size(), "COUNT", (double) CaseClusters.FEWEST, null);
		String reason = "%d cases with the same likely cause within 30 km of each other in 30 days, at least %d."
			.formatted(cluster.cases().size(), CaseClusters.FEWEST);
		return new Proposal(id, condition, at,
				counties.stream()
					.sorted(Comparator.comparing(County::name))
					.map((one) -> new AffectedCounty(one.code(), one.name(), one.region(), one.zone(), days.from(),
							days.to(), List.of(count), List.of(reason), AffectedCounty.Standing.OPEN))
					.toList(),
				this.growers.count(counties.stream().map(County::code).toList(), concerns),
				CaseDraft.of(cluster, names, days, this.books.of(Language.ENGLISH)),
				CaseDraft.of(cluster, names, days, this.books.of(Language.SPANISH)));
	}

}
