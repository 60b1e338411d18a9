package org.leafward.quick;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalRecords;
import org.leafward.accounts.Secret;
import org.leafward.feeds.FeedDocuments;
import org.leafward.feeds.FeedId;
import org.leafward.feeds.FeedInfo;
import org.leafward.feeds.FeedOptions;
import org.leafward.feeds.Feeds;
import org.leafward.feeds.NewFeed;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.quick.core.PlantedWhen;
import org.leafward.quick.store.QuickTable;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Makes, finds and ends calendars of people who gave no address. */
@Service
public class QuickCalendars {

	private static final String NOBODY = "Somebody with a quick calendar";

	private final QuickTable table;

	private final People people;

	private final PersonalRecords records;

	private final Register register;

	private final Feeds feeds;

	private final FeedDocuments documents;

	private final QuickPlantings plantings;

	private final Clock clock;

	QuickCalendars(QuickTable table, People people, PersonalRecords records, Register register, Feeds feeds,
			FeedDocuments documents, QuickPlantings plantings, Clock clock) {
		this.table = table;
		this.people = people;
		this.records = records;
		this.register = register;
		this.feeds = feeds;
		this.documents = documents;
		this.plantings = plantings;
		this.clock = clock;
	}

	/**
	 * Makes a calendar: a person without an address, a site, its plantings and a feed,
	 * all or nothing. Its document is built with its tasks before this returns, since
	 * some programs come back for changes only the day after.
	 * @param wanted what is wanted
	 * @return with its secrets
	 * @throws BadInput when a species is not in the catalogue
	 */
	public MadeCalendar make(NewQuickCalendar wanted) {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), wanted.site().zone());
		PlantedWhen when = this.plantings.at(wanted.site().point(), today);
		MadeCalendar made = this.register.together(() -> {
			this.table.lock(wanted.key());
			this.table.ofKey(wanted.key()).ifPresent(this::giveWay);
			Person person = this.people.withoutAddress(NOBODY, wanted.site().zone());
			Site site = this.register.addSite(person.id(), wanted.site());
			this.register.addPlantings(site.id(), this.plantings.of(wanted, when));
			NewFeed feed = this.feeds.createForSite(site.id(), person.id(), FeedOptions.of(wanted.speech()));
			String secret = Secret.make();
			this.table.add(new QuickCalendar(UUID.randomUUID(), person.id(), site.id(), feed.id()), Secret.hash(secret),
					wanted.key(), this.clock.instant());
			return new MadeCalendar(feed, secret, site);
		});
		this.documents.buildNow(made.site().id().value(), made.site().owner().value());
		return made;
	}

	/** Sent twice, or sent again after another look: the last one counts. */
	private void giveWay(QuickCalendar earlier) {
		this.documents.noteFetches();
		if (unclaimed(earlier.person()) && latest(earlier).map(FeedInfo::lastFetchedAt).isEmpty()) {
			end(earlier);
		}
		else {
			this.table.freeKey(earlier.id());
		}
	}

	private boolean unclaimed(PersonId person) {
		return this.people.find(person).map((one) -> one.mailbox().isEmpty()).orElse(true);
	}

	/**
	 * Whether the calendar belongs to somebody who can sign in.
	 * @param calendar the calendar
	 * @return true once its owner has confirmed an address
	 */
	public boolean claimed(QuickCalendar calendar) {
		return !unclaimed(calendar.person());
	}

	/**
	 * Looks a calendar up.
	 * @param secret anything
	 * @return the calendar
	 * @throws NotThere for an unknown secret
	 */
	public QuickCalendar require(String secret) {
		return this.table.ofHash(Secret.hash(secret))
			.orElseThrow(() -> new NotThere("There is no such calendar, or it was deleted."));
	}

	/**
	 * The feed of a calendar.
	 * @param calendar the calendar
	 * @return the latest one
	 */
	public Optional<FeedInfo> latest(QuickCalendar calendar) {
		return this.feeds.ofSite(calendar.site())
			.stream()
			.filter((one) -> one.id().equals(calendar.feed()))
			.findFirst();
	}

	/**
	 * Gives a calendar another address; the former one is dead then.
	 * @param calendar the calendar
	 * @return the new feed, shown only now
	 */
	@Transactional
	public NewFeed anotherAddress(QuickCalendar calendar) {
		FeedOptions options = latest(calendar).map(FeedInfo::options).orElse(FeedOptions.USUAL);
		for (FeedInfo one : this.feeds.ofSite(calendar.site())) {
			if (one.revokedAt() == null) {
				this.feeds.revoke(one.id(), calendar.person());
			}
		}
		NewFeed made = this.feeds.createForSite(calendar.site(), calendar.person(), options);
		this.table.changeFeed(calendar.id(), made.id());
		return made;
	}

	/**
	 * Deletes a calendar with its place and plants.
	 * @param calendar the calendar
	 */
	@Transactional
	public void delete(QuickCalendar calendar) {
		end(calendar);
	}

	/**
	 * Deletes the calendar of a feed that ended unused, unless somebody can still sign in
	 * to it. Again does nothing.
	 * @param feed the feed
	 */
	@Transactional
	public void ended(FeedId feed) {
		this.table.ofFeed(feed).filter((one) -> unclaimed(one.person())).ifPresent(this::end);
	}

	private void end(QuickCalendar calendar) {
		this.feeds.abandon(calendar.site());
		this.records.forget(calendar.person());
	}

}
