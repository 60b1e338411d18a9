package org.leafward.advisories.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryText;
import org.leafward.advisories.cap.CapAlert;
import org.leafward.advisories.cap.CapWriter;
import org.leafward.advisories.core.chain.ChainLink;
import org.leafward.advisories.core.chain.Content;
import org.leafward.advisories.core.chain.Message;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.leafward.regions.core.Area.Polygon;
import org.springframework.stereotype.Component;

/** Makes documents of CAP of messages. */
@Component
class CapDocuments {

	private final AdvisorySettings settings;

	private final Regions regions;

	CapDocuments(AdvisorySettings settings, Regions regions) {
		this.settings = settings;
		this.regions = regions;
	}

	/**
	 * The document of a message.
	 * @param message the message
	 * @param references what it refers to
	 * @return its octets
	 */
	byte[] write(Message message, String references) {
		return CapWriter.write(alert(message, references));
	}

	private CapAlert alert(Message message, String references) {
		ChainLink link = message.link();
		Content content = message.content();
		List<CapAlert.Text> texts = new ArrayList<>();
		texts.add(text("en-US", content.event().english(), content.english(), Parts.ENGLISH));
		if (content.spanish() != null) {
			texts.add(text("es-US", content.event().spanish(), content.spanish(), Parts.SPANISH));
		}
		return new CapAlert(link.identifier(), link.sender(), link.sentAt(), content.zone(),
				this.settings.invented() ? CapAlert.Status.TEST : CapAlert.Status.ACTUAL, link.type(), "Leafward",
				references, message.advisory().toString(), content.facts(), content.event().english(), link.onset(),
				link.expires(), texts, this.settings.senderName(),
				this.settings.absolute("/advisories/" + message.advisory()), this.settings.contact(), note(message),
				areas(content));
	}

	private @Nullable String note(Message message) {
		String reason = (message.reason() != null && !message.reason().isBlank()) ? message.reason() : null;
		if (!this.settings.invented()) {
			return reason;
		}
		return "The place and the weather are invented." + ((reason != null) ? " " + reason : "");
	}

	/** Titles of the parts, as weather services write them. */
	private enum Parts {

		ENGLISH("WHAT", "WHERE", "WHEN", "IMPACTS"), SPANISH("QUÉ", "DÓNDE", "CUÁNDO", "EFECTOS");

		private final List<String> titles;

		Parts(String... titles) {
			this.titles = List.of(titles);
		}

	}

	private static CapAlert.Text text(String language, String event, AdvisoryText words, Parts parts) {
		StringJoiner description = new StringJoiner("\n\n");
		List<String> said = List.of(words.what(), words.where(), words.when(), words.impacts());
		for (int i = 0; i < said.size(); i++) {
			description.add(parts.titles.get(i) + ": " + said.get(i));
		}
		return new CapAlert.Text(language, event, words.headline(), description.toString(), words.toDo());
	}

	private List<CapAlert.Place> areas(Content content) {
		List<County> counties = this.regions.counties()
			.stream()
			.filter((one) -> content.area().counties().contains(one.code()))
			.toList();
		if (!content.area().rings().isEmpty()) {
			return List
				.of(new CapAlert.Place("Part of " + String.join(", ", counties.stream().map(County::name).toList()),
						content.area().rings()));
		}
		if (counties.isEmpty()) {
			// Their file is gone since the message was written.
			return content.area()
				.counties()
				.stream()
				.sorted()
				.map((code) -> new CapAlert.Place(code, List.of()))
				.toList();
		}
		return counties.stream()
			.map((one) -> new CapAlert.Place(one.name() + ", " + one.region(),
					one.area().polygons().stream().map(Polygon::outer).toList()))
			.toList();
	}

	/**
	 * Where the document of a message lies for good.
	 * @param advisory the advisory
	 * @return from the root
	 */
	static String path(Advisory advisory) {
		return "/advisories/messages/" + advisory.message() + ".cap.xml";
	}

}
