package org.leafward.advisories.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.advisories.Advisories;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.core.chain.Content;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.core.chain.MessageType;
import org.leafward.advisories.desk.AdvisorySettings;
import org.leafward.advisories.desk.Desk;
import org.leafward.advisories.desk.Draft;
import org.leafward.advisories.desk.DraftFields;
import org.leafward.advisories.desk.Preview;
import org.leafward.advisories.desk.ReachPreview;
import org.leafward.advisories.share.DayAndTime;
import org.leafward.language.Language;
import org.leafward.measure.BadInput;
import org.leafward.pages.Viewer;
import org.leafward.pages.Viewers;
import org.leafward.regions.Regions;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Where specialists write advisories, look whom they reach, and send them. */
@Controller
class DeskPages {

	private static final String DESK = "redirect:/advisories/compose";

	private final Desk desk;

	private final ReachPreview reach;

	private final Preview preview;

	private final ComposeForm form;

	private final Advisories advisories;

	private final People people;

	private final Regions regions;

	private final Viewers viewers;

	private final AdvisorySettings settings;

	private final Clock clock;

	DeskPages(Desk desk, ReachPreview reach, Preview preview, ComposeForm form, Advisories advisories, People people,
			Regions regions, Viewers viewers, AdvisorySettings settings, Clock clock) {
		this.desk = desk;
		this.reach = reach;
		this.preview = preview;
		this.form = form;
		this.advisories = advisories;
		this.people = people;
		this.regions = regions;
		this.viewers = viewers;
		this.settings = settings;
		this.clock = clock;
	}

	/** A draft in the list. */
	record DraftLine(String href, String title, String state, String changed, @Nullable String trouble) {
	}

	@GetMapping("/advisories/compose")
	String desk(Model model) {
		Viewer viewer = this.viewers.current();
		List<Draft> open = this.desk.open();
		Instant now = this.clock.instant();
		model.addAttribute("section", "advisories");
		model.addAttribute("counties", this.desk.counties());
		model.addAttribute("drafts", open.stream().map((one) -> line(one)).toList());
		model.addAttribute("current",
				this.advisories.current()
					.stream()
					.filter((one) -> one.area()
						.counties()
						.stream()
						.anyMatch((code) -> this.desk.counties().stream().anyMatch((mine) -> mine.code().equals(code))))
					.map((one) -> AdvisoryView.of(one, this.regions, Language.ENGLISH))
					.toList());
		model.addAttribute("twoPeople", this.settings.twoPeople());
		model.addAttribute("year", now.atZone(ZoneOffset.UTC).getYear());
		model.addAttribute("operator", viewer.operator());
		return "advisories/desk";
	}

	private DraftLine line(Draft draft) {
		String headline = draft.fields().text("headline");
		String title = headline.isBlank() ? "Without a headline" : headline;
		String state = what(draft.type()) + ", " + draft.state().words();
		Instant sendAt = draft.sendAt();
		if (sendAt != null) {
			state += ": " + DayAndTime.of(sendAt, this.form.zone(draft.fields()));
		}
		return new DraftLine("/advisories/compose/" + draft.id(), title, state,
				DayAndTime.of(draft.changedAt(), this.form.zone(draft.fields())) + by(draft.writer()), draft.trouble());
	}

	private String by(@Nullable UUID person) {
		return ", by " + ((person != null) ? this.people.find(new PersonId(person)).map(Person::name).orElse("somebody")
				: "the operator");
	}

	private static String what(MessageType type) {
		return switch (type) {
			case ALERT -> "New advisory";
			case UPDATE -> "Change of an advisory";
			case CANCEL -> "Calling off";
		};
	}

	@PostMapping("/advisories/compose")
	String begin(@RequestParam(required = false) @Nullable UUID proposal) {
		return DESK + "/" + this.desk.begin(proposal).id();
	}

	@PostMapping("/advisories/compose/of/{id}")
	String follow(@PathVariable UUID id, @RequestParam String type) {
		MessageType wanted = type.equals("cancel") ? MessageType.CANCEL : MessageType.UPDATE;
		return DESK + "/" + this.desk.follow(new AdvisoryId(id), wanted).id();
	}

	@GetMapping("/advisories/compose/{id}")
	String edit(@PathVariable UUID id, Model model) {
		show(this.desk.draft(id), Map.of(), false, model);
		return "advisories/compose";
	}

	private void show(Draft draft, Map<String, String> errors, boolean checked, Model model) {
		model.addAttribute("section", "advisories");
		model.addAttribute("draft", draft);
		model.addAttribute("heading", what(draft.type()));
		model.addAttribute("cancels", draft.type() == MessageType.CANCEL);
		model.addAttribute("updates", draft.type() == MessageType.UPDATE);
		model.addAttribute("closed", !draft.state().open());
		Instant sendAt = draft.sendAt();
		model.addAttribute("sendAtWords",
				(sendAt != null) ? DayAndTime.of(sendAt, this.form.zone(draft.fields())) : null);
		model.addAttribute("form", this.form.of(draft.fields(), this.desk.counties()));
		model.addAttribute("twoPeople", this.settings.twoPeople());
		model.addAttribute("maySend", this.desk.maySend(draft));
		Map<String, String> all = new LinkedHashMap<>(errors);
		if (draft.state().open()) {
			try {
				Content content = this.desk.content(draft);
				ReachPreview.Reach counted = this.reach.of(content.area(), content.plants());
				model.addAttribute("reach", counted);
				model.addAttribute("preview", this.preview.of(draft, content));
			}
			catch (BadInput ex) {
				if (checked) {
					ex.byField().forEach(all::putIfAbsent);
				}
			}
		}
		model.addAttribute("errors", all);
		model.addAttribute("ready", model.getAttribute("reach") != null);
	}

	private static DraftFields given(HttpServletRequest request) {
		Map<String, List<String>> values = new HashMap<>();
		request.getParameterMap().forEach((name, all) -> values.put(name, Arrays.asList(all)));
		return new DraftFields(values);
	}

	@PostMapping("/advisories/compose/{id}")
	String save(@PathVariable UUID id, @RequestParam int version, HttpServletRequest request, Model model,
			HttpServletResponse response) {
		return acting(id, model, response, () -> {
			Draft saved = this.desk.save(id, version, given(request));
			show(saved, Map.of(), true, model);
			return "advisories/compose";
		});
	}

	/** What can't be done is said above the draft as it is now. */
	private String acting(UUID id, Model model, HttpServletResponse response, Supplier<String> action) {
		try {
			return action.get();
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			show(this.desk.draft(id), inTheForm(ex.byField()), true, model);
			return "advisories/compose";
		}
		catch (Desk.Overtaken ex) {
			response.setStatus(HttpStatus.CONFLICT.value());
			show(this.desk.draft(id), Map.of("draft", String.valueOf(ex.getMessage())), true, model);
			return "advisories/compose";
		}
	}

	/** What is no field of the form is said of the draft as a whole. */
	private static Map<String, String> inTheForm(Map<String, String> errors) {
		Map<String, String> known = new LinkedHashMap<>();
		errors.forEach((field, words) -> known
			.putIfAbsent(DraftFields.TEXTS.contains(field) || DraftFields.LISTS.contains(field) || field.equals("send")
					? field : "draft", words));
		return known;
	}

	@PostMapping("/advisories/compose/{id}/ask")
	String ask(@PathVariable UUID id, @RequestParam int version, Model model, HttpServletResponse response) {
		return acting(id, model, response, () -> {
			this.desk.ask(id, version);
			return DESK;
		});
	}

	@PostMapping("/advisories/compose/{id}/send")
	String send(@PathVariable UUID id, @RequestParam int version, Model model, HttpServletResponse response,
			RedirectAttributes flash) {
		return acting(id, model, response, () -> {
			Message message = this.desk.send(id, version);
			flash.addFlashAttribute("remarks", List.of("It was sent."));
			return "redirect:/advisories/" + message.advisory();
		});
	}

	@PostMapping("/advisories/compose/{id}/schedule")
	String schedule(@PathVariable UUID id, @RequestParam int version, @RequestParam(defaultValue = "") String sendAt,
			Model model, HttpServletResponse response) {
		return acting(id, model, response, () -> {
			this.desk.schedule(id, version, sendAt);
			return DESK + "/" + id;
		});
	}

	@PostMapping("/advisories/compose/{id}/drop")
	String drop(@PathVariable UUID id, @RequestParam int version, Model model, HttpServletResponse response) {
		return acting(id, model, response, () -> {
			this.desk.drop(id, version);
			return DESK;
		});
	}

}
