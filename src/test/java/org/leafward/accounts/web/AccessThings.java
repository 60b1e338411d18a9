package org.leafward.accounts.web;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalToken;
import org.leafward.accounts.Scope;
import org.leafward.accounts.Secret;
import org.leafward.accounts.signin.PersonalTokens;
import org.leafward.accounts.store.TokenTable;
import org.leafward.advisories.AffectedCounty;
import org.leafward.advisories.AlertDefaults;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.Condition;
import org.leafward.advisories.DraftText;
import org.leafward.advisories.Growth;
import org.leafward.advisories.PlantChoice;
import org.leafward.advisories.Proposal;
import org.leafward.advisories.ProposalId;
import org.leafward.advisories.core.chain.MessageType;
import org.leafward.advisories.desk.Draft;
import org.leafward.advisories.desk.DraftFields;
import org.leafward.advisories.store.DraftTable;
import org.leafward.advisories.store.ProposalTable;
import org.leafward.amounts.calculator.Calculation;
import org.leafward.amounts.calculator.Calculations;
import org.leafward.care.CareLog;
import org.leafward.care.KeptCalculations;
import org.leafward.care.NewObservation;
import org.leafward.care.Observation;
import org.leafward.care.PhenologyLog;
import org.leafward.care.TaskCalendar;
import org.leafward.care.WorkDone;
import org.leafward.care.workshop.PackHistory;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.feeds.FeedOptions;
import org.leafward.feeds.Feeds;
import org.leafward.feeds.NewFeed;
import org.leafward.lookalikes.CaseDesk;
import org.leafward.lookalikes.CaseId;
import org.leafward.lookalikes.CasePhotos;
import org.leafward.lookalikes.Cases;
import org.leafward.lookalikes.NewCase;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.SpeciesId;
import org.leafward.register.Beds;
import org.leafward.register.NewBed;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.NewSoilTest;
import org.leafward.register.NewWatering;
import org.leafward.register.Placement;
import org.leafward.register.PlantPhoto;
import org.leafward.register.PlantPhotos;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilFigures;
import org.leafward.register.SoilTests;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Waterings;
import org.leafward.register.Wind;
import org.leafward.reminders.Series;
import org.leafward.reminders.core.Links.Act;
import org.leafward.reminders.links.SignedLinks;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Real things of people, by which addresses are filled in. */
@TestComponent
class AccessThings {

	static final String COUNTY = "Alder County";

	static final String STATION = "XX000000001";

	/** The base point of P-256 (FIPS 186-4, D.1.2.3): a public key that fits. */
	private static final String POINT = "046b17d1f2e12c4247f8bce6e563a440f277037d812deb33a0f4a13945d898c296"
			+ "4fe342e2fe1a7f9b8ee7eb4a7c0f9e162bce33576b315ececbb6406837bf51f5";

	/** A variable of an address, and what stands before it. */
	private static final Pattern VARIABLE = Pattern.compile("([^/]+)/\\{[^}]+}");

	/** Addresses that take something away; each call gets a thing of its own. */
	private static final Pattern ENDS_SOMETHING = Pattern.compile(".*/address|DELETE .*|POST .*/(undo|revoke|stop)");

	private final Register register;

	private final People people;

	private final Waterings waterings;

	private final Beds beds;

	private final SoilTests soilTests;

	private final CareLog log;

	private final PhenologyLog phenology;

	private final TaskCalendar calendar;

	private final Feeds feeds;

	private final Stations stations;

	private final TokenTable tokens;

	private final JdbcClient database;

	private final Clock clock;

	private final PackHistory packs;

	private final SignedLinks links;

	private final Calculations calculations;

	private final KeptCalculations kept;

	private final AccessGroups together;

	private final ProposalTable proposals;

	private final DraftTable drafts;

	private final Cases cases;

	private final CaseDesk desk;

	private final CasePhotos photos;

	private final PlantPhotos plantPhotos;

	private final Map<SiteId, CaseId> opened = new HashMap<>();

	private int made;

	AccessThings(Register register, People people, Waterings waterings, Beds beds, SoilTests soilTests, CareLog log,
			PhenologyLog phenology, TaskCalendar calendar, Feeds feeds, Stations stations, TokenTable tokens,
			JdbcClient database, Clock clock, PackHistory packs, SignedLinks links, Calculations calculations,
			KeptCalculations kept, AccessGroups together, ProposalTable proposals, DraftTable drafts, Cases cases,
			CaseDesk desk, CasePhotos photos, PlantPhotos plantPhotos) {
		this.register = register;
		this.people = people;
		this.waterings = waterings;
		this.beds = beds;
		this.soilTests = soilTests;
		this.log = log;
		this.phenology = phenology;
		this.calendar = calendar;
		this.feeds = feeds;
		this.stations = stations;
		this.tokens = tokens;
		this.database = database;
		this.clock = clock;
		this.packs = packs;
		this.links = links;
		this.calculations = calculations;
		this.kept = kept;
		this.together = together;
		this.proposals = proposals;
		this.drafts = drafts;
		this.cases = cases;
		this.desk = desk;
		this.photos = photos;
		this.plantPhotos = plantPhotos;
	}

	/**
	 * What somebody has.
	 *
	 * @param owner whose it is
	 * @param site a site in Alder County
	 * @param planting a planting there
	 * @param task a task of it
	 * @param watering a watering there
	 * @param entry an entry of its care log
	 * @param observation something seen there
	 * @param feed a feed of it
	 * @param secret what stands in the address of the feed
	 * @param mail a mail to the owner
	 * @param token a token of theirs
	 */
	record Having(PersonId owner, SiteId site, UUID planting, UUID task, UUID watering, UUID entry, UUID observation,
			UUID feed, String secret, UUID mail, UUID token) {
	}

	void station() {
		this.stations.register(new Station(new StationId(STATION), "Far away", new GeoPoint(-45, 10, 100), true));
	}

	PersonId person(String name) {
		Person person = this.people.join(name, name.toLowerCase(Locale.ROOT).replace(' ', '.') + "@example.org",
				ZoneId.of("America/Chicago"));
		return person.id();
	}

	Having of(PersonId owner) {
		SiteId site = this.register
			.addSite(owner,
					new NewSite("Garden", COUNTY, new GeoPoint(45.037, -90.512, 203), ZoneId.of("America/Chicago"),
							SoilTexture.LOAM, Sun.FULL_SUN, Wind.AVERAGE))
			.id();
		UUID planting = planting(site);
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC);
		// Without a station only what was seen gives dates.
		this.phenology.observe(site,
				new NewObservation(new PlantingId(planting), Observation.Kind.PHASE, "bloom-end", today.minusDays(2)),
				null);
		UUID task = this.calendar.ofSite(site, new DayWindow(today, today.plusYears(1))).get(0).id().value();
		NewFeed feed = this.feeds.createForSite(site, owner, FeedOptions.USUAL);
		UUID mail = UUID.randomUUID();
		this.database.sql("""
				insert into reminders.message (id, person_id, sender, recipient, recipient_name, subject, body_text,
					body_html, message_id, state, created_at)
				values (?, ?, 'a@example.org', 'b@example.org', 'B', 'Prune', 'Prune.', '', ?, 'KEPT', now())
				""").params(mail, owner.value(), mail.toString()).update();
		return new Having(owner, site, planting, task, watering(site), entry(site), observation(site),
				feed.id().value(), feed.token(), mail, token(owner));
	}

	private UUID planting(SiteId site) {
		return this.register
			.addPlantings(site, List.of(new NewPlanting(new SpeciesId("syringa-vulgaris"), "lilac", 1,
					LocalDate.of(2015, 4, 20), Placement.GROUND, false, false)))
			.get(0)
			.id()
			.value();
	}

	private UUID bed(SiteId site) {
		return this.beds.add(site, NewBed.named("bed " + this.made++)).id().value();
	}

	private UUID soilTest(SiteId site) {
		return this.soilTests
			.keep(site, new NewSoilTest(null, nextDay(),
					new SoilFigures(7, 1, SoilExtract.SATURATED_PASTE, 2.0, null, null), 15, SoilDrainage.GOOD, ""),
					null)
			.id()
			.value();
	}

	private UUID kept(Having having) {
		PlantingId planting = new PlantingId(having.planting());
		Calculation water = this.calculations.of("water",
				Map.of("what", "pot", "pot", String.valueOf(5 + this.made++)));
		this.kept.keep(water, planting, null, null);
		return this.kept.latest(planting, 0, 200)
			.stream()
			.filter((one) -> one.inputs().equals(water.query()))
			.findFirst()
			.orElseThrow()
			.id();
	}

	/** An open case of which the help desk was asked. */
	private CaseId plantCase(Having having) {
		CaseId known = this.opened.get(having.site());
		if (known != null && this.cases.find(known).filter((one) -> !one.closed()).isPresent()) {
			return known;
		}
		LocalDate seen = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC).minusDays(3);
		CaseId id = this.cases
			.open(having.owner(),
					new NewCase(having.site(), new PlantingId(having.planting()), new SpeciesId("syringa-vulgaris"),
							"lilac", COUNTY, ZoneId.of("America/Chicago"), seen, null))
			.id();
		this.desk.ask(id);
		this.opened.put(having.site(), id);
		return id;
	}

	private UUID photo(Having having) {
		CaseId id = plantCase(having);
		if (!this.photos.of(id).isEmpty()) {
			return this.photos.of(id).get(0).id();
		}
		return this.photos.add(id, png(), "").id();
	}

	private UUID plantPhoto(Having having) {
		PlantingId planting = new PlantingId(having.planting());
		List<PlantPhoto> there = this.plantPhotos.of(planting);
		return there.isEmpty() ? this.plantPhotos
			.add(this.register.find(having.site()).orElseThrow(), planting, png(), "lilac", "2020-05-04")
			.id() : there.get(0).id();
	}

	private static byte[] png() {
		try {
			ByteArrayOutputStream out = new ByteArrayOutputStream();
			ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", out);
			return out.toByteArray();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private UUID watering(SiteId site) {
		return this.waterings.record(site, new NewWatering(null, nextDay(), 0.1, ""), null).id().value();
	}

	private UUID entry(SiteId site) {
		return this.log.log(site, null, "mulch", WorkDone.on(nextDay(), ""), null).entry().id().value();
	}

	private UUID observation(SiteId site) {
		return this.phenology
			.observe(site, new NewObservation(null, Observation.Kind.EVENT, "thunder", nextDay()), null)
			.id()
			.value();
	}

	private UUID feed(Having of) {
		return this.feeds.createForSite(of.site(), of.owner(), FeedOptions.USUAL).id().value();
	}

	/** Its push service is this machine, which is never called. */
	private UUID browser(PersonId owner) {
		UUID id = UUID.randomUUID();
		this.database.sql("""
				insert into reminders.push_subscription (id, person_id, endpoint, p256dh, auth, label, created_at)
				values (?, ?, ?, decode(?, 'hex'), decode(repeat('00', 16), 'hex'), 'phone', now())
				""").params(id, owner.value(), "https://127.0.0.1:9/" + id, POINT).update();
		return id;
	}

	/** A message that a mail server refused, about something that is still of use. */
	private UUID refused(Having of) {
		UUID mail = UUID.randomUUID();
		this.database.sql("""
				insert into reminders.message (id, person_id, sender, recipient, recipient_name, subject, body_text,
					body_html, message_id, state, created_at)
				values (?, ?, 'a@example.org', 'b@example.org', 'B', 'Prune', 'Prune.', '', ?, 'FAILED', now())
				""").params(mail, of.owner().value(), mail.toString()).update();
		this.database.sql("""
				insert into reminders.reminder (id, person_id, task_id, first_day, dedup_key, due_at, expires_at, state,
					next_try_at, message_id)
				values (?, ?, ?, current_date, ?, now(), now() + interval '1 day', 'FAILED', now(), ?)
				""").params(UUID.randomUUID(), of.owner().value(), of.task(), "mail:" + mail + "@x", mail).update();
		return mail;
	}

	/** What stands in the link of a reminder that was sent. */
	private String actLink(Having of) {
		UUID reminder = UUID.randomUUID();
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC);
		this.database.sql("""
				insert into reminders.reminder (id, person_id, task_id, first_day, dedup_key, due_at, expires_at, state,
					next_try_at)
				values (?, ?, ?, ?, ?, now(), now(), 'SENT', now())
				""")
			.params(reminder, of.owner().value(), of.task(), today, "mail:%s@%s".formatted(reminder, today))
			.update();
		return end(this.links.act(reminder, Act.LATER));
	}

	/** An advisory that is being written. */
	private UUID draft() {
		UUID id = UUID.randomUUID();
		this.drafts.put(new Draft(id, null, MessageType.ALERT, null, null, Set.of("us-ia-alder-county"),
				new DraftFields(Map.of()), Draft.State.WRITING, null, null, null, 0, this.clock.instant(), null, null));
		return id;
	}

	/** A proposal of the watch about the county. */
	private UUID proposal() {
		DraftText text = new DraftText("Hot, dry wind", "Hot", "There.", "Soon.", "Scorch.", "Water.");
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC);
		ProposalId id = new ProposalId(UUID.randomUUID());
		this.proposals
			.add(new Proposal(id,
					new Condition("hot-dry-wind", new Bilingual("Hot dry wind", "Viento"), new AlertDefaults("Met",
							"Expected", "Moderate", "Likely", Set.of("Prepare")), PlantChoice.EVERYTHING),
					this.clock.instant(),
					List.of(new AffectedCounty("us-ia-alder-county", COUNTY, "US-IA", ZoneId.of("America/Chicago"),
							today, today, List.of(), List.of(), AffectedCounty.Standing.OPEN)),
					Growth.NONE, text, text));
		return id.value();
	}

	private static String end(String address) {
		return address.substring(address.lastIndexOf('/') + 1);
	}

	private UUID token(PersonId owner) {
		return token(owner, Set.of(Scope.READ), PersonalTokens.PREFIX + Secret.make(), Duration.ofDays(1)).id();
	}

	/** One site takes only so much on a day. */
	private LocalDate nextDay() {
		return LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC).minusDays(1 + this.made++ % 300);
	}

	/** A token with any scopes, past what people may give themselves. */
	PersonalToken token(PersonId owner, Set<Scope> scopes, String secret, Duration lasts) {
		Instant now = this.clock.instant();
		PersonalToken token = new PersonalToken(UUID.randomUUID(), owner, "test", scopes, now.minusSeconds(60),
				now.plus(lasts), null, null);
		this.tokens.add(token, secret);
		return token;
	}

	String secretFor(PersonId owner, Scope... scopes) {
		String secret = PersonalTokens.PREFIX + Secret.make();
		token(owner, (scopes.length == 0) ? EnumSet.allOf(Scope.class) : Set.of(scopes), secret, Duration.ofDays(1));
		return secret;
	}

	/**
	 * An address with things in it.
	 * @param method of the call
	 * @param pattern as the controller has it
	 * @param of whose things
	 */
	String address(String method, String pattern, Having of) {
		boolean ends = ENDS_SOMETHING.matcher(method + " " + pattern).matches() && !pattern.startsWith("/tasks");
		boolean changes = method.equals("POST");
		String path = pattern;
		for (Matcher next = VARIABLE.matcher(path); next.find(); next = VARIABLE.matcher(path)) {
			boolean ofPlanting = next.group(1).equals("photos") && pattern.contains("/plantings/");
			String value = ofPlanting ? plantPhoto(of).toString() : value(next.group(1), of, ends, changes);
			path = path.substring(0, next.end(1)) + "/" + value + path.substring(next.end());
		}
		return path.replace("/**", "/anything");
	}

	private String version() {
		return this.packs.newest()
			.stream()
			.filter((one) -> one.pack().equals("shrubs"))
			.map((one) -> Integer.toString(one.version()))
			.findFirst()
			.orElseThrow();
	}

	private String value(String before, Having having, boolean ends, boolean changes) {
		return switch (before) {
			case "sites" -> having.site().toString();
			case "plantings" -> (ends ? planting(having.site()) : having.planting()).toString();
			case "beds" -> bed(having.site()).toString();
			case "tasks" -> having.task().toString();
			case "cases" -> plantCase(having).toString();
			case "photos" -> photo(having).toString();
			case "ask", "answers" -> "when";
			case "review" -> "2026";
			case "waterings" -> (ends ? watering(having.site()) : having.watering()).toString();
			case "soil-tests" -> soilTest(having.site()).toString();
			// Whoever has the secret may; here nobody has it.
			case "manage" -> "A".repeat(43);
			case "log" -> (ends ? entry(having.site()) : having.entry()).toString();
			case "observations" -> (ends ? observation(having.site()) : having.observation()).toString();
			case "feeds", "subscribe" -> (ends ? feed(having) : having.feed()).toString();
			case "f" -> having.secret();
			case "push" -> browser(having.owner()).toString();
			case "r" -> actLink(having);
			case "u" -> end(this.links.stop(having.owner(), "mail", Series.SINGLE));
			case "outbox" -> having.mail().toString();
			case "post-room" -> refused(having).toString();
			case "groups", "workdays", "members", "links", "join", "w" ->
				this.together.value(before, having.owner(), having.site(), changes);
			case "keep" -> "water";
			case "kept" -> kept(having).toString();
			case "tokens" -> (ends ? token(having.owner()) : having.token()).toString();
			case "people", "accounts" -> having.owner().toString();
			case "stations" -> STATION;
			case "species" -> "syringa-vulgaris";
			case "advisories", "messages", "of", "after" -> new UUID(0, 7).toString();
			case "compose" -> draft().toString();
			case "season" -> "2026";
			case "season-dates" -> "last-freeze";
			case "pictures" -> "wide.png";
			case "counties" -> "us-ia-alder-county";
			case "proposals" -> proposal().toString();
			case "conditions" -> "hot-dry-wind";
			case "workshop", "packs", "rules" -> "shrubs";
			case "shrubs" -> "prune-after-bloom";
			case "look-alikes" -> "pairs.yaml";
			case "versions" -> version();
			// Everybody may; there are no counties here.
			case "c" -> "us-ia-alder-county";
			case "us-ia-alder-county" -> "roses";
			case "roses" -> "es-us";
			default -> throw new IllegalStateException("nothing to put after /" + before + "/: add it here");
		};
	}

}
