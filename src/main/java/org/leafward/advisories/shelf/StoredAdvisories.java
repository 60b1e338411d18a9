package org.leafward.advisories.shelf;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Advisories;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.AdvisoryState;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.store.SentTable;
import org.leafward.measure.BadInput;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Service;

/** Advisories as everybody may read them. */
@Service
class StoredAdvisories implements Advisories {

	private static final int MOST_DAYS = 60;

	private static final int MOST_PAST = 200;

	private static final int MOST_SIZE = 10_000;

	private static final Comparator<Advisory> BY_ONSET = Comparator.comparing(Advisory::onset)
		.thenComparing(Advisory::sent);

	private final Chains chains;

	private final SentTable table;

	private final Concerned concerned;

	private final Register register;

	private final Catalogue catalogue;

	private final Clock clock;

	StoredAdvisories(Chains chains, SentTable table, Concerned concerned, Register register, Catalogue catalogue,
			Clock clock) {
		this.chains = chains;
		this.table = table;
		this.concerned = concerned;
		this.register = register;
		this.catalogue = catalogue;
		this.clock = clock;
	}

	@Override
	public Optional<Advisory> find(AdvisoryId id) {
		return this.chains.find(id.value()).map((chain) -> chain.at(this.clock.instant()));
	}

	@Override
	public List<Advisory> current() {
		Instant now = this.clock.instant();
		return this.chains.all()
			.stream()
			.filter((chain) -> chain.state(now).current())
			.map((chain) -> chain.at(now))
			.sorted(BY_ONSET)
			.toList();
	}

	@Override
	public List<Advisory> current(String county) {
		return current().stream().filter((one) -> one.area().counties().contains(county)).toList();
	}

	@Override
	public Map<SiteId, List<Advisory>> currentFor(Collection<SiteId> sites) {
		List<Advisory> current = current();
		return (current.isEmpty() || sites.isEmpty()) ? Map.of() : concerning(this.register.find(sites), current);
	}

	private Map<SiteId, List<Advisory>> concerning(Collection<Site> sites, List<Advisory> advisories) {
		Map<SiteId, List<Planting>> plantings = this.register.plantingsOf(sites.stream().map(Site::id).toList());
		Map<SiteId, List<Advisory>> found = new HashMap<>();
		for (Site site : sites) {
			String county = this.concerned.county(site.county(), site.region());
			List<Species> grown = plantings.getOrDefault(site.id(), List.of())
				.stream()
				.flatMap((one) -> this.catalogue.find(one.species()).stream())
				.toList();
			List<Advisory> theirs = advisories.stream()
				.filter((one) -> one.concerns(county, site.point(), grown))
				.toList();
			if (!theirs.isEmpty()) {
				found.put(site.id(), theirs);
			}
		}
		return found;
	}

	@Override
	public List<Advisory> of(PersonId person, int days) {
		List<Advisory> all = withPast(null, days);
		if (all.isEmpty()) {
			return List.of();
		}
		return concerning(this.register.sitesOf(person), all).values()
			.stream()
			.flatMap(List::stream)
			.collect(Collectors.toMap(Advisory::id, (one) -> one, (one, same) -> one))
			.values()
			.stream()
			.sorted(BY_ONSET)
			.toList();
	}

	@Override
	public List<Advisory> ofCounty(String county, int days) {
		return withPast(county, days).stream()
			.filter((one) -> one.area().counties().contains(county))
			.collect(Collectors.toMap(Advisory::id, (one) -> one, (one, same) -> one))
			.values()
			.stream()
			.sorted(BY_ONSET.thenComparing((one) -> one.id().value()))
			.toList();
	}

	/** Some may come twice. */
	private List<Advisory> withPast(@Nullable String county, int days) {
		if (days < 0 || days > MOST_DAYS) {
			throw new BadInput("%d days are outside 0 to %d".formatted(days, MOST_DAYS), "days", "ask for fewer days");
		}
		Instant now = this.clock.instant();
		List<Advisory> all = new ArrayList<>(current());
		if (days > 0) {
			Instant from = now.minus(Duration.ofDays(days));
			this.table
				.newest((county != null) ? Set.of(county) : null, from.minus(Duration.ofDays(MOST_DAYS * 2L)),
						now.plusSeconds(1), 0, MOST_PAST)
				.stream()
				.map(Message::advisory)
				.map(this.chains::find)
				.flatMap(Optional::stream)
				.map((chain) -> chain.at(now))
				.filter((one) -> !one.state().current() && !ended(one).isBefore(from))
				.forEach(all::add);
		}
		return all;
	}

	private static Instant ended(Advisory advisory) {
		return (advisory.state() == AdvisoryState.CANCELLED) ? advisory.sent() : advisory.expires();
	}

	@Override
	public List<PersonId> concerned(AdvisoryId id, @Nullable PersonId after, int size) {
		return concerned(id, after, size, Chain::messages);
	}

	@Override
	public List<PersonId> concernedNow(AdvisoryId id, @Nullable PersonId after, int size) {
		return concerned(id, after, size, (chain) -> List.of(chain.latest()));
	}

	private List<PersonId> concerned(AdvisoryId id, @Nullable PersonId after, int size,
			Function<Chain, List<Message>> which) {
		if (size < 1 || size > MOST_SIZE) {
			throw new BadInput("%d is outside 1 to %d".formatted(size, MOST_SIZE), "size", "ask for fewer at a time");
		}
		return this.chains.find(id.value())
			.map((chain) -> this.concerned.people(which.apply(chain)
				.stream()
				.map(Message::content)
				.map((content) -> new Concerned.Aim(content.area(), content.plants()))
				.toList(), after, size))
			.orElse(List.of());
	}

}
