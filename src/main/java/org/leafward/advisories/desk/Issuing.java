package org.leafward.advisories.desk;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.AuditLog;
import org.leafward.accounts.Deed;
import org.leafward.advisories.AdvisoryCancelled;
import org.leafward.advisories.AdvisoryIssued;
import org.leafward.advisories.AdvisoryUpdated;
import org.leafward.advisories.core.chain.CapTime;
import org.leafward.advisories.core.chain.ChainLink;
import org.leafward.advisories.core.chain.Content;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.core.chain.MessageChain;
import org.leafward.advisories.core.chain.MessageType;
import org.leafward.advisories.shelf.Chains;
import org.leafward.advisories.store.SentTable;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Sends messages: one row and one event, whomever it concerns. Who tells people does so
 * behind it.
 */
@Service
public class Issuing {

	/** A cancellation needn't stand longer. */
	private static final Duration CANCELLED_FOR = Duration.ofHours(24);

	private final SentTable table;

	private final CapDocuments documents;

	private final AdvisorySettings settings;

	private final Chains chains;

	private final Regions regions;

	private final AuditLog audit;

	private final ApplicationEventPublisher events;

	private final Clock clock;

	Issuing(SentTable table, CapDocuments documents, AdvisorySettings settings, Chains chains, Regions regions,
			AuditLog audit, ApplicationEventPublisher events, Clock clock) {
		this.table = table;
		this.documents = documents;
		this.settings = settings;
		this.chains = chains;
		this.regions = regions;
		this.audit = audit;
		this.events = events;
		this.clock = clock;
	}

	/**
	 * Who stands behind a message.
	 *
	 * @param writer who wrote it; null for the operator token
	 * @param approver who approved it; null for nobody
	 */
	public record Hands(@Nullable UUID writer, @Nullable UUID approver) {
	}

	/**
	 * Sends a message now.
	 * @param advisory the advisory; a new identifier for a first message
	 * @param type what it does
	 * @param content what it says; of a cancellation the times are set here
	 * @param reason what changed, or why it is called off; null for a first message
	 * @param hands who stands behind it
	 * @return the message
	 * @throws org.leafward.measure.BadInput when it may not follow what was sent before
	 */
	@Transactional
	public Message send(UUID advisory, MessageType type, Content content, @Nullable String reason, Hands hands) {
		return send(advisory, type, content, reason, hands, this.clock.instant());
	}

	/**
	 * Sends a message as if at a moment that may have passed; for what is invented.
	 * @param advisory the advisory
	 * @param type what it does
	 * @param content what it says
	 * @param reason what changed
	 * @param hands who stands behind it
	 * @param now the moment
	 * @return the message
	 */
	@Transactional(propagation = Propagation.REQUIRED)
	public Message send(UUID advisory, MessageType type, Content content, @Nullable String reason, Hands hands,
			Instant now) {
		this.table.lock(advisory);
		MessageChain before = new MessageChain(this.table.of(advisory).stream().map(Message::link).toList());
		Instant sent = before.nextSent(now);
		Content said = (type == MessageType.CANCEL) ? ending(content, before, sent) : content;
		before.check(type, sent, said.onset(), said.expires());
		UUID id = UUID.randomUUID();
		ChainLink link = new ChainLink(type, this.settings.sender(), "urn:uuid:" + id,
				CapTime.write(sent, content.zone()), sent, said.onset(), said.expires(), said.area().counties());
		Message message = new Message(0, id, advisory, before.links().size() + 1, link, said, reason, hands.writer(),
				hands.approver());
		this.table.add(message, this.documents.write(message, before.references(sent)));
		tell(message, before.with(link).counties());
		this.audit.note(Deed.SENT_ALERT, null, what(message));
		TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {

			@Override
			public void afterCommit() {
				Issuing.this.chains.look();
			}

		});
		return message;
	}

	private static Content ending(Content content, MessageChain before, Instant sent) {
		Instant last = before.latest().map(ChainLink::expires).orElse(sent);
		Instant brief = sent.plus(CANCELLED_FOR);
		Instant end = last.isBefore(brief) ? last : brief;
		Instant least = sent.plus(Duration.ofHours(1));
		return new Content(content.condition(), content.event(), content.facts(), content.area(), content.plants(),
				content.works(), sent, end.isBefore(least) ? least : end, content.zone(), content.english(),
				content.spanish());
	}

	private void tell(Message message, Set<String> counties) {
		ChainLink link = message.link();
		String severity = message.content().facts().severity().cap();
		this.events.publishEvent(switch (link.type()) {
			case ALERT -> new AdvisoryIssued(message.advisory(), message.id(), link.sentAt(), link.onset(),
					link.expires(), severity, counties);
			case UPDATE -> new AdvisoryUpdated(message.advisory(), message.id(), link.sentAt(), link.onset(),
					link.expires(), severity, counties);
			case CANCEL -> new AdvisoryCancelled(message.advisory(), message.id(), link.sentAt(), link.onset(),
					link.expires(), severity, counties);
		});
	}

	/** Short enough for the log whatever the names. */
	private String what(Message message) {
		String counties = message.content()
			.area()
			.counties()
			.stream()
			.map((code) -> this.regions.find(code).map(County::name).orElse(code))
			.sorted()
			.collect(Collectors.joining(", "));
		String words = "%s %d: %s; %s".formatted(message.link().type().cap(), message.number(),
				message.content().event().english(), counties);
		return words.substring(0, Math.min(words.length(), 300));
	}

}
