package org.leafward.advisories.desk;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryState;
import org.leafward.advisories.AdvisoryText;
import org.leafward.advisories.MessagePreview;
import org.leafward.advisories.MessagePreview.Shown;
import org.leafward.advisories.core.chain.CapTime;
import org.leafward.advisories.core.chain.ChainLink;
import org.leafward.advisories.core.chain.Content;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.core.chain.MessageChain;
import org.leafward.advisories.core.chain.MessageType;
import org.leafward.advisories.shelf.Chain;
import org.leafward.advisories.shelf.Chains;
import org.leafward.language.Language;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;

/** What a draft would look like to those who get it. */
@Component
public class Preview {

	private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

	private final CapDocuments documents;

	private final Chains chains;

	private final AdvisorySettings settings;

	private final ObjectProvider<MessagePreview> messages;

	private final Clock clock;

	Preview(CapDocuments documents, Chains chains, AdvisorySettings settings, ObjectProvider<MessagePreview> messages,
			Clock clock) {
		this.messages = messages;
		this.documents = documents;
		this.chains = chains;
		this.settings = settings;
		this.clock = clock;
	}

	/**
	 * What others would see.
	 *
	 * @param told the mail and what a browser shows, a language each; none where nobody
	 * tells people
	 * @param calendarTitle title of the calendar entry
	 * @param calendarDays its days
	 * @param english words of the page
	 * @param spanish words of the page in Spanish; null for none
	 * @param cap the document
	 */
	public record Seen(List<Shown> told, String calendarTitle, String calendarDays, AdvisoryText english,
			@Nullable AdvisoryText spanish, String cap) {
	}

	/**
	 * What a draft would look like.
	 * @param draft the draft
	 * @param content what it says
	 * @return with an identifier of no message
	 */
	public Seen of(Draft draft, Content content) {
		Instant now = this.clock.instant();
		MessageChain before = Optional.ofNullable(draft.advisory())
			.flatMap(this.chains::find)
			.map(Chain::links)
			.orElse(MessageChain.NONE);
		Instant sent = before.nextSent(now);
		UUID none = new UUID(0, 0);
		ChainLink link = new ChainLink(draft.type(), this.settings.sender(), "urn:uuid:" + none,
				CapTime.write(sent, content.zone()), sent, content.onset(), content.expires(),
				content.area().counties());
		String reason = draft.fields().text("reason").strip();
		Message message = new Message(0, none, (draft.advisory() != null) ? draft.advisory() : none,
				before.links().size() + 1, link, content, reason.isEmpty() ? null : reason, null, null);
		AdvisoryText words = content.english();
		String days = day(content.onset(), content.zone());
		String end = day(content.expires().minusSeconds(1), content.zone());
		return new Seen(told(message, now), words.headline(), days.equals(end) ? days : days + " – " + end, words,
				content.spanish(),
				new String(this.documents.write(message, before.references(sent)), StandardCharsets.UTF_8));
	}

	/** Where there are no Spanish words both readers get the English ones. */
	private List<Shown> told(Message message, Instant now) {
		AdvisoryState state = (message.link().type() == MessageType.CANCEL) ? AdvisoryState.CANCELLED
				: AdvisoryState.AHEAD;
		Advisory advisory = message.asAdvisory(state, now);
		return this.messages.stream()
			.flatMap((one) -> Arrays.stream(Language.values()).map((language) -> one.of(advisory, language)))
			.toList();
	}

	private static String day(Instant time, ZoneId zone) {
		return DAY.format(LocalDate.ofInstant(time, zone));
	}

}
