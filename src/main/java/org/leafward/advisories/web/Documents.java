package org.leafward.advisories.web;

import io.swagger.v3.oas.annotations.Hidden;
import java.net.URI;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.Advisories;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryText;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.atom.AtomFeed;
import org.leafward.advisories.atom.AtomWriter;
import org.leafward.advisories.cap.CapWriter;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.desk.AdvisorySettings;
import org.leafward.advisories.shelf.Chain;
import org.leafward.advisories.shelf.Chains;
import org.leafward.advisories.shelf.Past;
import org.leafward.measure.NotThere;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.leafward.regions.core.Area.Polygon;
import org.leafward.regions.core.Ring;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/**
 * Advisories for programs: CAP, Atom and JSON. A document of a county is made of what is
 * in memory when somebody asks, for all who ask alike.
 */
@RestController
@Hidden
class Documents {

	private static final String WHOLE = "";

	private final Chains chains;

	private final Past past;

	private final Advisories advisories;

	private final Regions regions;

	private final AdvisorySettings settings;

	private final Clock clock;

	Documents(Chains chains, Past past, Advisories advisories, Regions regions, AdvisorySettings settings,
			Clock clock) {
		this.chains = chains;
		this.past = past;
		this.advisories = advisories;
		this.regions = regions;
		this.settings = settings;
		this.clock = clock;
	}

	@GetMapping("/advisories/messages/{message}.cap.xml")
	ResponseEntity<byte[]> cap(@PathVariable UUID message) {
		return answer(CapWriter.MEDIA_TYPE + ";charset=utf-8", Caching.FOR_GOOD, this.past.document(message));
	}

	@GetMapping("/advisories/feed.atom")
	ResponseEntity<byte[]> atom() {
		return feed(null);
	}

	@GetMapping("/advisories/{county}/feed.atom")
	ResponseEntity<byte[]> atom(@PathVariable String county) {
		return feed(county(county));
	}

	private County county(String code) {
		return this.regions.find(code).orElseThrow(() -> new NotThere("There is no county '%s' here.".formatted(code)));
	}

	private static ResponseEntity<byte[]> answer(String type, String caching, byte[] octets) {
		return ResponseEntity.ok()
			.contentType(MediaType.parseMediaType(type))
			.header(HttpHeaders.CACHE_CONTROL, caching)
			.header(HttpHeaders.ACCESS_CONTROL_ALLOW_ORIGIN, "*")
			.header("Content-Security-Policy", "default-src 'none'")
			.body(octets);
	}

	private ResponseEntity<byte[]> feed(@Nullable County county) {
		Instant now = this.clock.instant();
		List<Message> messages = new ArrayList<>();
		for (Chain chain : this.chains.all()) {
			// As long as a message is in force or refers to one that is, and a day more.
			if (chain.links().longest().plus(Chains.KEPT).isAfter(now) && concerns(chain, county)) {
				messages.addAll(chain.messages());
			}
		}
		messages.sort(Comparator.comparing(Message::seq).reversed());
		String path = "/advisories" + ((county != null) ? "/" + county.code() : WHOLE);
		Instant updated = messages.stream()
			.map((one) -> one.link().sentAt())
			.max(Instant::compareTo)
			.orElse(Instant.EPOCH);
		AtomFeed feed = new AtomFeed(this.settings.absolute(path + "/feed.atom"),
				"Garden advisories" + ((county != null) ? " for " + county.name() : ""),
				"Advisories that are in force or ended within the last day, an entry for each message", updated,
				this.settings.absolute(path + "/feed.atom"), this.settings.absolute(path), this.settings.senderName(),
				messages.stream().map(this::entry).toList());
		return answer(AtomWriter.MEDIA_TYPE, Caching.FOR_A_MINUTE, AtomWriter.write(feed));
	}

	private static boolean concerns(Chain chain, @Nullable County county) {
		return county == null || chain.links().counties().contains(county.code());
	}

	private AtomFeed.Entry entry(Message message) {
		AdvisoryText words = message.content().english();
		Set<String> codes = message.content().area().counties();
		List<Ring> rings = message.content().area().rings().isEmpty() ? this.regions.counties()
			.stream()
			.filter((one) -> codes.contains(one.code()))
			.flatMap((one) -> one.area().polygons().stream())
			.map(Polygon::outer)
			.toList() : message.content().area().rings();
		return new AtomFeed.Entry(URI.create(message.link().identifier()), words.headline(),
				words.what() + "\n\n" + words.toDo(), message.link().sentAt(),
				this.settings.absolute("/advisories/messages/" + message.id() + ".cap.xml"),
				this.settings.absolute("/advisories/" + message.advisory()), message.content().event().english(),
				message.content().facts().severity().cap(), rings);
	}

	/**
	 * What is in force.
	 *
	 * @param invented whether place and weather are invented
	 * @param area name of the county, or of all
	 * @param advisories what begins first comes first
	 */
	record Current(boolean invented, String area, List<Item> advisories) {
	}

	/**
	 * An advisory for programs.
	 *
	 * @param id identifier
	 * @param message identifier of its latest message, as in CAP
	 * @param state {@code ahead} or {@code in-force}
	 * @param event what it is, by language
	 * @param severity by CAP's word
	 * @param urgency by CAP's word
	 * @param certainty by CAP's word
	 * @param sent when its latest message was sent
	 * @param onset when it begins
	 * @param expires when it ends
	 * @param counties names of its counties
	 * @param english its words
	 * @param spanish its words in Spanish
	 * @param page address of its page
	 * @param cap address of its CAP document
	 */
	record Item(String id, String message, String state, Bilingual event, String severity, String urgency,
			String certainty, Instant sent, Instant onset, Instant expires, List<String> counties, AdvisoryText english,
			@Nullable AdvisoryText spanish, URI page, URI cap) {
	}

	@GetMapping(path = "/advisories/current.json")
	ResponseEntity<Current> json() {
		return current(null);
	}

	@GetMapping(path = "/advisories/{county}/current.json")
	ResponseEntity<Current> json(@PathVariable String county) {
		return current(county(county));
	}

	private ResponseEntity<Current> current(@Nullable County county) {
		List<Advisory> current = (county != null) ? this.advisories.current(county.code()) : this.advisories.current();
		return ResponseEntity.ok()
			.contentType(MediaType.APPLICATION_JSON)
			.header(HttpHeaders.CACHE_CONTROL, Caching.FOR_A_MINUTE)
			.header(HttpHeaders.ACCESS_CONTROL_ALLOW_ORIGIN, "*")
			.body(new Current(this.settings.invented(), (county != null) ? county.name() : "all counties",
					current.stream().map(this::item).toList()));
	}

	private Item item(Advisory one) {
		return new Item(one.id().toString(), "urn:uuid:" + one.message(),
				one.state().name().toLowerCase(Locale.ROOT).replace('_', '-'), one.event(),
				one.facts().severity().cap(), one.facts().urgency().cap(), one.facts().certainty().cap(), one.sent(),
				one.onset(), one.expires(),
				this.regions.counties()
					.stream()
					.filter((county) -> one.area().counties().contains(county.code()))
					.map(County::name)
					.toList(),
				one.english(), one.spanish(), this.settings.absolute(one.path()),
				this.settings.absolute("/advisories/messages/" + one.message() + ".cap.xml"));
	}

}
