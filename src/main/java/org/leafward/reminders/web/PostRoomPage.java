package org.leafward.reminders.web;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.reminders.MessagePage;
import org.leafward.reminders.PostRoom;
import org.leafward.reminders.PostRoom.Standing;
import org.leafward.reminders.Suppressions;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Whether reminders leave; for the operator. */
@Controller
class PostRoomPage {

	private static final int SIZE = 25;

	private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("EEE d MMM, HH:mm 'UTC'", Locale.ENGLISH)
		.withZone(ZoneOffset.UTC);

	private final PostRoom room;

	private final Suppressions suppressions;

	PostRoomPage(PostRoom room, Suppressions suppressions) {
		this.room = room;
		this.suppressions = suppressions;
	}

	/**
	 * An hour in which messages left.
	 *
	 * @param from its beginning
	 * @param messages how many
	 */
	public record HourRow(String from, long messages) {
	}

	@GetMapping("/post-room")
	String standing(@RequestParam(defaultValue = "0") int page, Model model) {
		Standing standing = this.room.standing();
		MessagePage trouble = this.room.inTrouble(page, SIZE);
		model.addAttribute("section", "outbox");
		model.addAttribute("depth", standing.depth());
		model.addAttribute("oldest", oldest(standing.depth().oldest(), standing.oldestFor()));
		model.addAttribute("late", standing.late());
		model.addAttribute("trouble", standing.trouble());
		model.addAttribute("hours",
				standing.sent()
					.stream()
					.map((hour) -> new HourRow(TIME.format(hour.from()), hour.messages()))
					.toList());
		model.addAttribute("mails",
				trouble.mails().stream().map((mail) -> MessageRow.of(mail, ZoneOffset.UTC)).toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext", trouble.more());
		return "reminders/post-room";
	}

	private static @Nullable String oldest(@Nullable Instant since, @Nullable Duration age) {
		return (since != null && age != null)
				? "%s, %d minutes ago".formatted(TIME.format(since), Math.max(0, age.toMinutes())) : null;
	}

	@PostMapping("/post-room/{id}/retry")
	String retry(@PathVariable String id) {
		this.room.retry(identifier(id));
		return "redirect:/post-room";
	}

	@PostMapping("/post-room/addresses")
	String suppress(@RequestParam(defaultValue = "") String address, Model model) {
		try {
			this.suppressions.suppress(address, "by hand");
			return "redirect:/mail-check";
		}
		catch (BadInput ex) {
			model.addAttribute("addressTrouble", ex.getMessage());
			model.addAttribute("address", address);
			return standing(0, model);
		}
	}

	private static UUID identifier(String text) {
		try {
			return UUID.fromString(text);
		}
		catch (IllegalArgumentException ex) {
			throw new NotThere("There is no such message.");
		}
	}

}
