package org.leafward.advisories.desk;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.Decider;
import org.leafward.advisories.Proposal;
import org.leafward.advisories.ProposalId;
import org.leafward.advisories.Proposals;
import org.leafward.advisories.core.chain.Content;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.core.chain.MessageChain;
import org.leafward.advisories.core.chain.MessageType;
import org.leafward.advisories.desk.Draft.State;
import org.leafward.advisories.shelf.Chain;
import org.leafward.advisories.shelf.Chains;
import org.leafward.advisories.store.DraftTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The desk of the specialists. Whoever writes about a county serves it; what others write
 * about theirs is not there for them.
 */
@Service
public class Desk {

	/** Farther ahead nobody schedules a message. */
	private static final int FARTHEST_DAYS = 30;

	private final DraftTable drafts;

	private final DraftReader reader;

	private final Prefilled prefilled;

	private final Issuing issuing;

	private final Chains chains;

	private final Proposals proposals;

	private final Regions regions;

	private final Viewers viewers;

	private final AdvisorySettings settings;

	private final Clock clock;

	Desk(DraftTable drafts, DraftReader reader, Prefilled prefilled, Issuing issuing, Chains chains,
			Proposals proposals, Regions regions, Viewers viewers, AdvisorySettings settings, Clock clock) {
		this.drafts = drafts;
		this.reader = reader;
		this.prefilled = prefilled;
		this.issuing = issuing;
		this.chains = chains;
		this.proposals = proposals;
		this.regions = regions;
		this.viewers = viewers;
		this.settings = settings;
		this.clock = clock;
	}

	/** Somebody else changed the draft meanwhile. */
	public static final class Overtaken extends RuntimeException {

		Overtaken() {
			super("Somebody changed this meanwhile. Look at what it says now, and change it again.");
		}

	}

	/**
	 * The counties that whoever asks may write about.
	 * @return by name; all for operators
	 */
	public List<County> counties() {
		Viewer viewer = this.viewers.current();
		return this.regions.counties()
			.stream()
			.filter((one) -> viewer.operator() || viewer.serves(one.name()))
			.toList();
	}

	private Set<String> codes() {
		return counties().stream().map(County::code).collect(Collectors.toCollection(TreeSet::new));
	}

	private boolean mine(Set<String> counties) {
		return this.viewers.current().operator() || codes().containsAll(counties);
	}

	/**
	 * What is being written.
	 * @return latest first
	 */
	public List<Draft> open() {
		return this.drafts.open(this.viewers.current().operator() ? null : codes());
	}

	/**
	 * A draft.
	 * @param id its identifier
	 * @return the draft
	 * @throws NotThere when there is none for whoever asks
	 */
	public Draft draft(UUID id) {
		return this.drafts.find(id)
			.filter((one) -> mine(one.counties()))
			.orElseThrow(() -> new NotThere("There is no draft " + id));
	}

	/**
	 * Begins an advisory.
	 * @param proposal the proposal that it goes back to; null for none
	 * @return the draft
	 * @throws NotThere when there is no such proposal for whoever asks
	 */
	@Transactional
	public Draft begin(@Nullable UUID proposal) {
		if (proposal == null) {
			return put(fresh(null, MessageType.ALERT, null, null, this.prefilled.blank(counties(), now())));
		}
		Proposal found = this.proposals.find(new ProposalId(proposal))
			.filter((one) -> one.counties().stream().anyMatch((county) -> codes().contains(county.code())))
			.orElseThrow(() -> new NotThere("There is no proposal " + proposal));
		return put(fresh(null, MessageType.ALERT, proposal, found.condition().code(),
				this.prefilled.of(found, codes(), now())));
	}

	/**
	 * Begins an update or a cancellation of what was sent.
	 * @param advisory the advisory
	 * @param type what is to be done
	 * @return the draft
	 * @throws NotThere when there is no such advisory for whoever asks
	 * @throws BadInput when it has ended
	 */
	@Transactional
	public Draft follow(AdvisoryId advisory, MessageType type) {
		Chain chain = sent(advisory);
		MessageChain links = chain.links();
		if (!links.state(now()).current()) {
			throw new BadInput("this advisory is " + links.state(now()).words(), "type", "write another one");
		}
		Content content = chain.latest().content();
		DraftFields fields = (type == MessageType.CANCEL) ? this.prefilled.calledOff(content, now())
				: this.prefilled.of(content);
		return put(fresh(advisory.value(), type, null, content.condition(), fields));
	}

	/**
	 * What was sent, for those who serve all of its counties.
	 * @param advisory the advisory
	 * @return all of its messages
	 * @throws NotThere when there is none for whoever asks
	 */
	public Chain sent(AdvisoryId advisory) {
		return this.chains.find(advisory.value())
			.filter((chain) -> mine(chain.links().counties()))
			.orElseThrow(() -> new NotThere("There is no advisory " + advisory));
	}

	private Draft fresh(@Nullable UUID advisory, MessageType type, @Nullable UUID proposal, @Nullable String condition,
			DraftFields fields) {
		return new Draft(UUID.randomUUID(), advisory, type, proposal, condition, counties(fields), fields,
				State.WRITING, null, this.viewers.current().person(), null, 0, now(), null, null);
	}

	private Set<String> counties(DraftFields fields) {
		return this.reader.counties(fields).stream().map(County::code).collect(Collectors.toCollection(TreeSet::new));
	}

	private Instant now() {
		return this.clock.instant().truncatedTo(ChronoUnit.SECONDS);
	}

	private Draft put(Draft draft) {
		if (!this.drafts.put(draft)) {
			throw new Overtaken();
		}
		return this.drafts.find(draft.id()).orElseThrow();
	}

	/**
	 * Keeps a form as it is, be it half of one.
	 * @param id the draft
	 * @param version that which the form was made from
	 * @param given the form
	 * @return the draft as it is now
	 * @throws BadInput when a county is chosen that whoever writes doesn't serve
	 * @throws Overtaken when somebody else changed it meanwhile
	 */
	@Transactional
	public Draft save(UUID id, int version, DraftFields given) {
		Draft draft = editable(id);
		DraftFields fields = (draft.type() == MessageType.CANCEL) ? this.prefilled.onlyWords(draft.fields(), given)
				: given;
		Set<String> counties = counties(fields);
		if (!mine(counties)) {
			throw new BadInput("a county is chosen that you don't serve", "counties",
					"choose yours; somebody who serves the others has to write for them");
		}
		return put(new Draft(id, draft.advisory(), draft.type(), draft.proposal(), draft.condition(), counties, fields,
				State.WRITING, null, this.viewers.current().person(), null, version, now(), null, null));
	}

	private Draft editable(UUID id) {
		Draft draft = draft(id);
		if (!draft.state().open()) {
			throw new BadInput("this draft was " + draft.state().words(), "state", "begin another one");
		}
		return draft;
	}

	/**
	 * What a draft says.
	 * @param draft the draft
	 * @return its content
	 * @throws BadInput with everything that is missing or wrong, times included
	 */
	public Content content(Draft draft) {
		Content content = this.reader.read(draft.fields(), draft.condition());
		MessageChain before = Optional.ofNullable(draft.advisory())
			.flatMap(this.chains::find)
			.map(Chain::links)
			.orElse(MessageChain.NONE);
		if (draft.type() != MessageType.CANCEL) {
			before.check(draft.type(), before.nextSent((draft.sendAt() != null) ? draft.sendAt() : now()),
					content.onset(), content.expires());
		}
		return content;
	}

	/**
	 * Whether whoever asks may send a draft, rather than ask somebody else to.
	 * @param draft the draft
	 * @return false for who wrote it, where a second person has to look
	 */
	public boolean maySend(Draft draft) {
		UUID person = this.viewers.current().person();
		return !this.settings.twoPeople()
				|| (draft.state() == State.WAITING && !Objects.equals(draft.writer(), person));
	}

	/**
	 * Asks for a second person.
	 * @param id the draft
	 * @param version that which was looked at
	 * @return the draft as it is now
	 */
	@Transactional
	public Draft ask(UUID id, int version) {
		Draft draft = editable(id);
		content(draft);
		return put(moved(draft, version, State.WAITING, null, null, null));
	}

	/**
	 * Sends a draft now.
	 * @param id the draft
	 * @param version that which was looked at
	 * @return the message
	 * @throws BadInput when something is missing
	 * @throws BadInput when a second person has to
	 * @throws Overtaken when somebody changed it meanwhile, or sent it
	 */
	@Transactional
	public Message send(UUID id, int version) {
		Draft draft = this.drafts.hold(editable(id).id()).orElseThrow(Overtaken::new);
		if (draft.version() != version) {
			throw new Overtaken();
		}
		permit(draft);
		return issue(draft, approver(draft));
	}

	private void permit(Draft draft) {
		if (!maySend(draft)) {
			throw new BadInput("this server wants two people for each message", "send",
					"ask for a second person; somebody else who serves these counties sends it");
		}
	}

	private @Nullable UUID approver(Draft draft) {
		UUID person = this.viewers.current().person();
		return Objects.equals(draft.writer(), person) ? null : person;
	}

	private Message issue(Draft draft, @Nullable UUID approver) {
		Content content = content(draft);
		UUID advisory = (draft.advisory() != null) ? draft.advisory() : UUID.randomUUID();
		String reason = draft.fields().text("reason").strip();
		Message message = this.issuing.send(advisory, draft.type(), content,
				reason.isEmpty() ? null : shortened(reason), new Issuing.Hands(draft.writer(), approver));
		put(moved(draft, draft.version(), State.SENT, null, approver, message.id()));
		if (draft.proposal() != null) {
			Viewer viewer = this.viewers.current();
			this.proposals.composed(new ProposalId(draft.proposal()), content.area().counties(), advisory,
					new Decider(viewer.name(), draft.writer()));
		}
		return message;
	}

	private static String shortened(String reason) {
		return reason.substring(0, Math.min(reason.length(), 300));
	}

	private Draft moved(Draft draft, int version, State state, @Nullable Instant sendAt, @Nullable UUID approver,
			@Nullable UUID message) {
		return new Draft(draft.id(), draft.advisory(), draft.type(), draft.proposal(), draft.condition(),
				draft.counties(), draft.fields(), state, sendAt, draft.writer(), approver, version, now(), null,
				message);
	}

	/**
	 * Has a draft sent by itself at a time.
	 * @param id the draft
	 * @param version that which was looked at
	 * @param at day and time, such as 2027-04-21T02:00, by the clock of its counties
	 * @return the draft as it is now
	 * @throws BadInput when the time is none, is past or far ahead, or something is
	 * missing
	 */
	@Transactional
	public Draft schedule(UUID id, int version, String at) {
		Draft draft = editable(id);
		permit(draft);
		Instant time = DraftReader.time(draft.fields().with("sendAt", List.of(at)), "sendAt",
				this.reader.zone(draft.fields()));
		if (!time.isAfter(now()) || time.isAfter(now().plus(Duration.ofDays(FARTHEST_DAYS)))) {
			throw new BadInput(
					"it would go out at a time that is past, or more than %d days ahead".formatted(FARTHEST_DAYS),
					"sendAt", "choose a time in the days to come");
		}
		Draft scheduled = moved(draft, version, State.SCHEDULED, time, approver(draft), null);
		content(scheduled);
		return put(scheduled);
	}

	/**
	 * Gives a draft up.
	 * @param id the draft
	 * @param version that which was looked at
	 */
	@Transactional
	public void drop(UUID id, int version) {
		put(moved(editable(id), version, State.DROPPED, null, null, null));
	}

	/**
	 * Sends what is due. What can't be sent goes back to who wrote it, with the reason.
	 * @return how many were sent
	 */
	@Transactional(readOnly = true)
	public List<UUID> due() {
		return this.drafts.due(now());
	}

	/**
	 * Sends one draft whose time has come, or gives it back with the reason.
	 * @param id the draft
	 * @return whether it was sent
	 */
	@Transactional
	public boolean sendDue(UUID id) {
		Optional<Draft> held = this.drafts.hold(id)
			.filter((one) -> one.state() == State.SCHEDULED && one.sendAt() != null && !one.sendAt().isAfter(now()));
		if (held.isEmpty()) {
			return false;
		}
		Draft draft = held.get();
		try {
			content(draft);
		}
		catch (BadInput ex) {
			this.drafts.put(new Draft(id, draft.advisory(), draft.type(), draft.proposal(), draft.condition(),
					draft.counties(), draft.fields(), State.WRITING, null, draft.writer(), null, draft.version(), now(),
					ex.what() + ": " + ex.mend(), null));
			return false;
		}
		issue(draft, draft.approver());
		return true;
	}

	/**
	 * The time of a field as the form shows it.
	 * @param time the time
	 * @param zone whose clock
	 * @return such as 2027-04-21T02:00
	 */
	static String local(Instant time, ZoneId zone) {
		return LocalDateTime.ofInstant(time, zone).truncatedTo(ChronoUnit.MINUTES).toString();
	}

}
