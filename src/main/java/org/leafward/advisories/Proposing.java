package org.leafward.advisories;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.leafward.advisories.conditions.Conditions;
import org.leafward.advisories.core.watch.CountyHit;
import org.leafward.advisories.core.watch.Drafts;
import org.leafward.advisories.core.watch.Hit;
import org.leafward.advisories.core.watch.Limits;
import org.leafward.advisories.core.watch.Scene;
import org.leafward.advisories.core.watch.Watch;
import org.leafward.advisories.core.watch.WatchCondition;
import org.leafward.advisories.core.watch.WatchCondition.Moved;
import org.leafward.advisories.store.ProposalTable;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.Place;
import org.leafward.climate.PlaceNow;
import org.leafward.climate.PlaceNowReader;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.Surroundings;
import org.leafward.climate.SurroundingsReader;
import org.leafward.language.Language;
import org.leafward.language.Phrasebooks;
import org.leafward.measure.GeoPoint;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;

/**
 * Looks at all counties and proposes what the conditions find: one proposal for a
 * condition and a region, with all of its counties where it is new.
 */
@Service
public class Proposing {

	private static final Logger LOG = LoggerFactory.getLogger(Proposing.class);

	/** Towns of a county that are looked at beside its middle. */
	private static final int MOST_TOWNS = 2;

	/** Counties whose stations are read at once. */
	private static final int BATCH = 100;

	private final Regions regions;

	private final Conditions conditions;

	private final ProposalTable table;

	private final Thresholds thresholds;

	private final SurroundingsReader surroundings;

	private final PlaceNowReader places;

	private final LocalClimate climate;

	private final Growers growers;

	private final StoredProposals proposals;

	private final Phrasebooks books;

	private final Clock clock;

	Proposing(Regions regions, Conditions conditions, ProposalTable table, Thresholds thresholds,
			SurroundingsReader surroundings, PlaceNowReader places, LocalClimate climate, Growers growers,
			StoredProposals proposals, Phrasebooks books, Clock clock) {
		this.regions = regions;
		this.conditions = conditions;
		this.table = table;
		this.thresholds = thresholds;
		this.surroundings = surroundings;
		this.places = places;
		this.climate = climate;
		this.growers = growers;
		this.proposals = proposals;
		this.books = books;
		this.clock = clock;
	}

	/** A hit with its county and the day there. */
	private record Found(County county, LocalDate today, Hit hit, int coolDown) {
	}

	/**
	 * Looks at all counties. A county or a proposal that fails holds up no other.
	 * @return what was proposed
	 */
	public List<ProposalId> propose() {
		Map<String, List<Moved>> set = this.conditions.all()
			.stream()
			.collect(Collectors.toMap(WatchCondition::code, (one) -> this.thresholds.set(one.code())));
		Map<String, Map<String, List<Found>>> found = new HashMap<>();
		List<County> counties = this.regions.counties();
		for (int from = 0; from < counties.size(); from += BATCH) {
			look(counties.subList(from, Math.min(counties.size(), from + BATCH)), set, found);
		}
		List<ProposalId> proposed = new ArrayList<>();
		for (WatchCondition condition : this.conditions.all()) {
			found.getOrDefault(condition.code(), Map.of()).forEach((region, here) -> {
				try {
					this.proposals
						.propose(condition.code(), here.stream()
							.map((one) -> new StoredProposals.Wanted(one.county().code(), one.today(), one.coolDown()))
							.toList(),
								(id, free, at) -> proposal(id, condition,
										here.stream().filter((one) -> free.contains(one.county().code())).toList(), at))
						.ifPresent(proposed::add);
				}
				catch (RuntimeException ex) {
					LOG.warn("{} was not proposed for {}; it is tried again", condition.code(), region, ex);
				}
			});
		}
		return proposed;
	}

	private void look(List<County> counties, Map<String, List<Moved>> set,
			Map<String, Map<String, List<Found>>> found) {
		Map<County, List<GeoPoint>> points = new HashMap<>();
		counties.forEach((one) -> points.put(one, this.regions.placesOf(one, MOST_TOWNS)));
		Surroundings around = this.surroundings.of(points.values().stream().flatMap(List::stream).toList());
		for (County county : counties) {
			try {
				look(county, Objects.requireNonNull(points.get(county)), around, set, found);
			}
			catch (RuntimeException ex) {
				LOG.warn("{} was not looked at; it is tried again", county.name(), ex);
			}
		}
	}

	private void look(County county, List<GeoPoint> points, Surroundings around, Map<String, List<Moved>> set,
			Map<String, Map<String, List<Found>>> found) {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), county.zone());
		Set<String> cooling = Set.copyOf(this.table.cooling(county.code(), today));
		List<WatchCondition> due = this.conditions.all()
			.stream()
			.filter((one) -> !cooling.contains(one.code()))
			.toList();
		Map<String, Hit> hits = new HashMap<>();
		for (GeoPoint point : points) {
			Place place = Place.of(point);
			PlaceNow now = this.places.at(place, today, around);
			Map<String, Hit> here = this.climate.answer(place, around, (markers) -> {
				Scene scene = new Scene(now, (key, season) -> markers.on(key, season).map(SeasonMarker::date));
				Map<String, Hit> met = new HashMap<>();
				for (WatchCondition condition : due) {
					Hit hit = Watch.look(condition, limits(condition, county, set), scene).hit();
					if (hit != null) {
						met.put(condition.code(), hit);
					}
				}
				return met;
			});
			here.forEach(hits::putIfAbsent);
		}
		for (WatchCondition condition : due) {
			Hit hit = hits.get(condition.code());
			if (hit != null) {
				found.computeIfAbsent(condition.code(), (code) -> new TreeMap<>())
					.computeIfAbsent(county.region(), (region) -> new ArrayList<>())
					.add(new Found(county, today, hit,
							(int) limits(condition, county, set).value(WatchCondition.COOL_DOWN)));
			}
		}
	}

	private static Limits limits(WatchCondition condition, County county, Map<String, List<Moved>> set) {
		return new Limits(condition, county.code(), county.region(), Objects.requireNonNull(set.get(condition.code())));
	}

	private Proposal proposal(ProposalId id, WatchCondition condition, List<Found> found, Instant at) {
		List<CountyHit> hits = found.stream()
			.map((one) -> new CountyHit(one.county().code(), one.county().name(), one.hit()))
			.toList();
		List<AffectedCounty> counties = found.stream()
			.map((one) -> new AffectedCounty(one.county().code(), one.county().name(), one.county().region(),
					one.county().zone(), one.hit().from(), one.hit().to(), one.hit().figures(), one.hit().reasons(),
					AffectedCounty.Standing.OPEN))
			.toList();
		return new Proposal(id, condition.condition(), at, counties,
				this.growers.count(counties.stream().map(AffectedCounty::code).toList(),
						condition.condition().concerns()),
				Drafts.of(condition, hits, this.books.of(Language.ENGLISH)),
				Drafts.of(condition, hits, this.books.of(Language.SPANISH)));
	}

}
