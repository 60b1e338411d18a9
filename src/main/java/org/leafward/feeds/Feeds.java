package org.leafward.feeds;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.feeds.poll.PollBoard;
import org.leafward.feeds.store.DocumentTable.Claimed;
import org.leafward.feeds.store.FeedTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.register.BedId;
import org.leafward.register.Beds;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.workdays.GroupId;
import org.leafward.workdays.Groups;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Subscriptions: made, listed and revoked. */
@Service
public class Feeds {

	/** 192 bits: beyond guessing, and 32 characters with nothing to pad. */
	private static final int TOKEN_OCTETS = 24;

	/**
	 * Living feeds of one site, bed, group or person for one owner; a bound against
	 * scripts.
	 */
	private static final int MOST_FEEDS = 50;

	private final FeedTable table;

	private final FeedDocuments documents;

	private final PollBoard board;

	private final Register register;

	private final People people;

	private final Groups groups;

	private final Beds beds;

	private final Clock clock;

	private final SecureRandom random = new SecureRandom();

	Feeds(FeedTable table, FeedDocuments documents, PollBoard board, Register register, People people, Groups groups,
			Beds beds, Clock clock) {
		this.board = board;
		this.table = table;
		this.documents = documents;
		this.register = register;
		this.people = people;
		this.groups = groups;
		this.beds = beds;
		this.clock = clock;
	}

	/**
	 * Makes a feed of one site's tasks; its document is built at once.
	 * @param site the site
	 * @param owner who may list and revoke it
	 * @param options what it holds and how it speaks
	 * @return with the token, shown only now
	 * @throws NotThere when there is no such site
	 * @throws BadInput when the site has 50 living feeds
	 */
	@Transactional
	public NewFeed createForSite(SiteId site, PersonId owner, FeedOptions options) {
		this.register.require(site);
		return create(FeedKind.SITE, site.value(), owner, options);
	}

	/**
	 * Makes a feed of the tasks of all sites of a person; its document is built at once.
	 * @param person whose tasks
	 * @param owner who may list and revoke it
	 * @param options what it holds and how it speaks
	 * @return with the token, shown only now
	 * @throws NotThere when there is no such person
	 * @throws BadInput when the person has 50 living feeds
	 */
	@Transactional
	public NewFeed createForPerson(PersonId person, PersonId owner, FeedOptions options) {
		if (this.people.find(person).isEmpty()) {
			throw new NotThere("There is no person " + person);
		}
		return create(FeedKind.PERSON, person.value(), owner, options);
	}

	/**
	 * Makes a feed of the tasks of what stands in a bed; its document is built at once.
	 * @param bed the bed
	 * @param owner who may list and revoke it
	 * @param options what it holds and how it speaks
	 * @return with the token, shown only now
	 * @throws NotThere when there is no such bed
	 * @throws BadInput when the bed has 50 living feeds
	 */
	@Transactional
	public NewFeed createForBed(BedId bed, PersonId owner, FeedOptions options) {
		if (this.beds.find(bed).isEmpty()) {
			throw new NotThere("There is no bed " + bed);
		}
		return create(FeedKind.BED, bed.value(), owner, options);
	}

	/**
	 * Makes a feed of what a group looks after and of its workdays; its document is built
	 * at once.
	 * @param group the group
	 * @param owner a member, who may list and revoke it; it is empty once they have left
	 * @param options what it holds and how it speaks
	 * @return with the token, shown only now
	 * @throws NotThere when there is no such group, or they don't belong to it
	 * @throws BadInput when they have 50 living feeds of it
	 */
	@Transactional
	public NewFeed createForGroup(GroupId group, PersonId owner, FeedOptions options) {
		this.groups.find(group)
			.filter((one) -> one.member(owner).isPresent())
			.orElseThrow(() -> new NotThere("There is no group " + group));
		return create(FeedKind.GROUP, group.value(), owner, options);
	}

	private NewFeed create(FeedKind kind, UUID what, PersonId owner, FeedOptions options) {
		if (this.table.countLiving(kind, what, owner) >= MOST_FEEDS) {
			throw new BadInput("there are %d living feeds of this already".formatted(MOST_FEEDS), "feed",
					"revoke one that is no longer used");
		}
		byte[] secret = new byte[TOKEN_OCTETS];
		this.random.nextBytes(secret);
		String token = Base64.getUrlEncoder().withoutPadding().encodeToString(secret);
		FeedId id = new FeedId(UUID.randomUUID());
		Instant now = this.clock.instant();
		this.table.add(id, kind, what, owner, FeedDocuments.sha256(token.getBytes(StandardCharsets.UTF_8)), options,
				now);
		this.documents.buildFirst(Claimed.of(id, kind, what, owner, options, now));
		return new NewFeed(id, token);
	}

	/**
	 * Feeds of an owner, revoked ones too.
	 * @param owner the owner
	 * @return at most 200, the newest first
	 */
	public List<FeedInfo> list(PersonId owner) {
		return this.table.ofOwner(owner);
	}

	/**
	 * Feeds of one site's tasks, revoked ones too.
	 * @param site the site
	 * @return at most 200, the newest first
	 */
	public List<FeedInfo> ofSite(SiteId site) {
		return this.table.of(FeedKind.SITE, site.value());
	}

	/**
	 * Who may list and revoke a feed.
	 * @param feed the feed
	 * @return empty when there is none
	 */
	public Optional<PersonId> ownerOf(FeedId feed) {
		return this.table.ownerOf(feed);
	}

	/**
	 * Changes what a feed holds and how it speaks; its address stays. Its documents are
	 * built anew at once.
	 * @param feed the feed
	 * @param owner its owner
	 * @param options what it holds from now on
	 * @throws NotThere when there is no such living feed of this owner
	 */
	@Transactional
	public void change(FeedId feed, PersonId owner, FeedOptions options) {
		if (!this.table.change(feed, owner, options)) {
			throw new NotThere("There is no feed " + feed);
		}
		this.documents.buildAgain(feed);
		this.board.settle();
	}

	/**
	 * Makes another address for what a feed shows and kills the one that it has.
	 * @param feed the feed
	 * @param owner its owner
	 * @return the new feed, with the same options
	 * @throws NotThere when there is no such living feed of this owner
	 */
	@Transactional
	public NewFeed rotate(FeedId feed, PersonId owner) {
		FeedInfo old = this.table.find(feed)
			.filter((one) -> one.revokedAt() == null && this.table.ownerOf(feed).filter(owner::equals).isPresent())
			.orElseThrow(() -> new NotThere("There is no feed " + feed));
		revoke(feed, owner);
		return create(old.kind(), old.what(), owner, old.options());
	}

	/**
	 * One feed.
	 * @param feed the feed
	 * @return empty when there is none
	 */
	public Optional<FeedInfo> find(FeedId feed) {
		return this.table.find(feed);
	}

	/**
	 * Kills the address of a feed for good and drops its document. Again does nothing.
	 * @param feed the feed
	 * @param owner its owner
	 * @throws NotThere when there is no such feed of this owner
	 */
	@Transactional
	public void revoke(FeedId feed, PersonId owner) {
		if (!this.table.revoke(feed, owner, this.clock.instant())) {
			throw new NotThere("There is no feed " + feed);
		}
		this.board.settle();
	}

	/**
	 * Kills all addresses of a site that is about to be deleted. They go on saying that
	 * they are gone for good, which is what makes programs stop asking, and no longer
	 * tell whose they were.
	 * @param site the site
	 */
	@Transactional
	public void abandon(SiteId site) {
		this.table.abandon(FeedKind.SITE, site.value(), this.clock.instant());
		this.board.settle();
	}

}
