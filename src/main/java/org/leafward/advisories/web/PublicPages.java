package org.leafward.advisories.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.Advisories;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.core.chain.MessageType;
import org.leafward.advisories.desk.AdvisorySettings;
import org.leafward.advisories.picture.Poster;
import org.leafward.advisories.share.DayAndTime;
import org.leafward.advisories.share.ShareKit;
import org.leafward.advisories.shelf.Chain;
import org.leafward.advisories.shelf.Past;
import org.leafward.language.Language;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.regions.County;
import org.leafward.regions.Regions;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** Advisories for everybody: by county, and each for itself. */
@Controller
class PublicPages {

	/** An identifier; anything else names a county. */
	private static final Pattern IDENTIFIER = Pattern
		.compile("[0-9a-fA-F]{8}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{4}-[0-9a-fA-F]{12}");

	private static final Duration BACK = Duration.ofDays(60);

	private static final int MOST_PAST = 20;

	private static final int MAP = 560;

	private final Advisories advisories;

	private final Past past;

	private final ShareKit kit;

	private final Regions regions;

	private final Viewers viewers;

	private final AdvisorySettings settings;

	private final Clock clock;

	PublicPages(Advisories advisories, Past past, ShareKit kit, Regions regions, Viewers viewers,
			AdvisorySettings settings, Clock clock) {
		this.advisories = advisories;
		this.past = past;
		this.kit = kit;
		this.regions = regions;
		this.viewers = viewers;
		this.settings = settings;
		this.clock = clock;
	}

	/** A county with what is in force there. */
	record CountyLine(String name, String href, long number) {
	}

	/** A message of an advisory. */
	record MessageLine(String what, String sent, @Nullable String reason, String cap) {
	}

	@GetMapping("/advisories")
	String all(Model model, HttpServletResponse response) {
		List<Advisory> current = this.advisories.current();
		frame(model, response);
		model.addAttribute("current", views(current, model));
		model.addAttribute("counties",
				this.regions.counties()
					.stream()
					.map((one) -> new CountyLine(one.name(), "/advisories/" + one.code(),
							current.stream().filter((other) -> other.area().counties().contains(one.code())).count()))
					.toList());
		Set<String> codes = new LinkedHashSet<>();
		current.forEach((one) -> codes.addAll(one.area().counties()));
		model.addAttribute("map", map(codes));
		model.addAttribute("ways", ways("/advisories"));
		return "advisories/all";
	}

	private void frame(Model model, HttpServletResponse response) {
		Viewer viewer = this.viewers.current();
		model.addAttribute("section", "public-advisories");
		model.addAttribute("writes", viewer.specialist() || viewer.operator());
		Caching.page(viewer, response);
	}

	private List<AdvisoryView> views(List<Advisory> advisories, Model model) {
		Language language = ReaderLanguage.of(model);
		return advisories.stream().map((one) -> AdvisoryView.of(one, this.regions, language)).toList();
	}

	private @Nullable String map(Set<String> codes) {
		return this.regions.map(MAP).map((one) -> one.dotting(codes).svg()).orElse(null);
	}

	/** Addresses by which others show the same. */
	record Ways(String atom, @Nullable String calendar, String json, String embed, String snippet) {
	}

	private Ways ways(String path) {
		String embed = this.settings.absolute(path + "/embed").toString();
		// A calendar holds one county; that of a garden has those that concern it.
		String calendar = path.equals("/advisories") ? null
				: this.settings.absolute(path + "/advisories.ics").toString();
		return new Ways(this.settings.absolute(path + "/feed.atom").toString(), calendar,
				this.settings.absolute(path + "/current.json").toString(), embed,
				"<iframe src=\"%s\" title=\"Garden advisories\" width=\"100%%\" height=\"320\" loading=\"lazy\"></iframe>"
					.formatted(embed));
	}

	@GetMapping("/advisories/{which}")
	String one(@PathVariable String which, Model model, HttpServletResponse response) {
		if (IDENTIFIER.matcher(which).matches()) {
			return advisory(new AdvisoryId(UUID.fromString(which)), model, response);
		}
		County county = county(which);
		frame(model, response);
		Instant now = this.clock.instant();
		List<AdvisoryView> current = views(this.advisories.current(county.code()), model);
		model.addAttribute("county", county);
		model.addAttribute("current", current);
		model.addAttribute("past", views(this.past.endedSince(county.code(), now.minus(BACK), now, MOST_PAST), model));
		model.addAttribute("ways", ways("/advisories/" + county.code()));
		return "advisories/county";
	}

	private County county(String code) {
		return this.regions.find(code).orElseThrow(() -> new NotThere("There is no county '%s' here.".formatted(code)));
	}

	private String advisory(AdvisoryId id, Model model, HttpServletResponse response) {
		Chain chain = this.past.find(id);
		frame(model, response);
		Advisory advisory = chain.at(this.clock.instant());
		model.addAttribute("advisory", views(List.of(advisory), model).get(0));
		model.addAttribute("map", map(advisory.area().counties()));
		model.addAttribute("part", !advisory.area().rings().isEmpty());
		model.addAttribute("messages", messages(chain));
		model.addAttribute("countyLines",
				this.regions.counties()
					.stream()
					.filter((one) -> advisory.area().counties().contains(one.code()))
					.map((one) -> new CountyLine(one.name(), "/advisories/" + one.code(), 0))
					.toList());
		model.addAttribute("senderName", this.settings.senderName());
		model.addAttribute("contact", this.settings.contact());
		model.addAttribute("serves", serves(advisory));
		return "advisories/advisory";
	}

	/** Whether whoever looks may change it. */
	private boolean serves(Advisory advisory) {
		Viewer viewer = this.viewers.current();
		return viewer.operator() || (viewer.specialist() && advisory.area()
			.counties()
			.stream()
			.allMatch((code) -> this.regions.find(code).map(County::name).filter(viewer::serves).isPresent()));
	}

	private static List<MessageLine> messages(Chain chain) {
		List<Message> newest = new ArrayList<>(chain.messages());
		newest.sort(Comparator.comparing(Message::number).reversed());
		return newest.stream()
			.map((one) -> new MessageLine(words(one.link().type()),
					DayAndTime.of(one.link().sentAt(), one.content().zone()), one.reason(),
					"/advisories/messages/" + one.id() + ".cap.xml"))
			.toList();
	}

	private static String words(MessageType type) {
		return switch (type) {
			case ALERT -> "Sent";
			case UPDATE -> "Changed";
			case CANCEL -> "Called off";
		};
	}

	@GetMapping("/advisories/{id}/share")
	String share(@PathVariable UUID id, Model model, HttpServletResponse response) {
		Chain chain = this.past.find(new AdvisoryId(id));
		frame(model, response);
		Advisory advisory = chain.at(this.clock.instant());
		Optional<String> alt = this.kit.picture(advisory, Poster.Form.WIDE, Language.ENGLISH).map((one) -> one.alt());
		model.addAttribute("heading", advisory.english().headline());
		model.addAttribute("back", advisory.path());
		model.addAttribute("texts", this.kit.texts(advisory));
		model.addAttribute("alt", alt.orElse(null));
		model.addAttribute("altSpanish", (advisory.spanish() != null)
				? this.kit.picture(advisory, Poster.Form.WIDE, Language.SPANISH).map((one) -> one.alt()).orElse(null)
				: null);
		model.addAttribute("pictures", advisory.path() + "/pictures/");
		model.addAttribute("stamp", "?v=" + advisory.number());
		return "advisories/share";
	}

}
