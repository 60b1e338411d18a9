package org.leafward.accounts.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import java.time.LocalDate;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.accounts.AuditLog;
import org.leafward.accounts.Brought;
import org.leafward.accounts.Deed;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalRecords;
import org.leafward.accounts.Role;
import org.leafward.accounts.Roles;
import org.leafward.accounts.archive.PersonalArchive;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.measure.NotThere;
import org.leafward.pages.Viewers;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/**
 * What somebody is called here, what is kept about them, and the way to take or end it.
 */
@Controller
class MyAccountPages {

	private static final int LATEST = 20;

	private final Viewers viewers;

	private final People people;

	private final Roles roles;

	private final AuditLog audit;

	private final PersonalRecords records;

	private final PersonalArchive archive;

	private final Clock clock;

	MyAccountPages(Viewers viewers, People people, Roles roles, AuditLog audit, PersonalRecords records,
			PersonalArchive archive, Clock clock) {
		this.viewers = viewers;
		this.people = people;
		this.roles = roles;
		this.audit = audit;
		this.records = records;
		this.archive = archive;
		this.clock = clock;
	}

	@GetMapping("/me")
	String account(Model model) {
		Person person = me();
		return page(person, person.name(), person.zone().getId(), Map.of(), model);
	}

	private String page(Person person, @Nullable String name, @Nullable String zone, Map<String, String> errors,
			Model model) {
		model.addAttribute("section", "me");
		model.addAttribute("name", name);
		model.addAttribute("zone", zone);
		model.addAttribute("errors", errors);
		model.addAttribute("address", Optional.ofNullable(person.email()).orElse(""));
		model.addAttribute("confirmed", person.confirmed());
		model.addAttribute("may",
				this.roles.of(person.id())
					.roles()
					.stream()
					.sorted()
					.map(Role::words)
					.collect(Collectors.joining(", ")));
		model.addAttribute("deeds",
				this.audit.of(person.id(), 0, LATEST).stream().map((one) -> line(one, person)).toList());
		return "accounts/me";
	}

	private String line(AuditLog.Entry entry, Person me) {
		String who = me.id().equals(entry.actor()) ? "You"
				: Optional.ofNullable(entry.actor())
					.flatMap(this.people::find)
					.map((one) -> one.name().split(" ")[0])
					.orElse("An operator");
		return "%s UTC: %s %s%s".formatted(entry.at().toString().substring(0, 16).replace('T', ' '), who,
				entry.deed().words(), entry.what().isEmpty() ? "" : ", " + entry.what());
	}

	@PostMapping("/me")
	String change(@RequestParam(required = false) @Nullable String name,
			@RequestParam(required = false) @Nullable String zone, HttpServletResponse response, Model model) {
		Person person = me();
		try {
			this.people.change(person.id(), Given.text("name", name), Given.zone("zone", zone));
			return "redirect:/me";
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			return page(person, name, zone, Map.of(ex.where(), ex.what() + "; " + ex.mend()), model);
		}
	}

	/** A POST, so that nobody is led to fetch it by a link. */
	@PostMapping("/me/archive")
	ResponseEntity<byte[]> takeAway() {
		Person person = me();
		byte[] zip = this.archive.pack(this.records.of(person.id()), this.records.files(person.id()));
		this.audit.note(Deed.EXPORTED, person.id(), "");
		String name = "leafward-%s.zip".formatted(LocalDate.ofInstant(this.clock.instant(), person.zone()));
		return ResponseEntity.ok()
			.header(HttpHeaders.CONTENT_TYPE, "application/zip")
			.header(HttpHeaders.CONTENT_DISPOSITION, ContentDisposition.attachment().filename(name).build().toString())
			.body(zip);
	}

	@GetMapping("/me/archive/brought")
	String bringPage(Model model) {
		model.addAttribute("section", "me");
		return "accounts/bring";
	}

	@PostMapping("/me/archive/brought")
	String bring(@RequestParam MultipartFile file, HttpServletResponse response, Model model) throws IOException {
		Person person = me();
		model.addAttribute("section", "me");
		try {
			Brought brought = this.archive.unpack(file.getBytes());
			this.records.bring(person.id(), brought);
			model.addAttribute("counts", brought.counts());
		}
		catch (BadInput ex) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			model.addAttribute("what", ex.what());
			model.addAttribute("where", ex.where());
			model.addAttribute("mend", ex.mend());
		}
		return "accounts/bring";
	}

	@GetMapping("/me/end")
	String endPage(Model model) {
		Person person = me();
		model.addAttribute("section", "me");
		model.addAttribute("name", person.name());
		model.addAttribute("counts",
				this.records.of(person.id())
					.entrySet()
					.stream()
					.filter((table) -> List.of("sites", "plantings", "tasks", "care-log", "feeds", "mails")
						.contains(table.getKey()))
					.map((table) -> "%d %s".formatted(table.getValue().size(), table.getKey().replace('-', ' ')))
					.toList());
		return "accounts/end";
	}

	@PostMapping("/me/end")
	String end(@RequestParam(defaultValue = "") String name, HttpServletRequest request, HttpServletResponse response,
			Model model) {
		Person person = me();
		if (!name.strip().equalsIgnoreCase(person.name())) {
			response.setStatus(HttpStatus.BAD_REQUEST.value());
			model.addAttribute("wrong", true);
			return endPage(model);
		}
		this.records.leave(person.id());
		HttpSession session = request.getSession(false);
		if (session != null) {
			session.invalidate();
		}
		model.addAttribute("section", "me");
		return "accounts/ended";
	}

	private Person me() {
		UUID person = this.viewers.current().person();
		return Optional.ofNullable(person)
			.map(PersonId::new)
			.flatMap(this.people::find)
			.orElseThrow(() -> new NotThere("The operator token has no account of its own."));
	}

}
