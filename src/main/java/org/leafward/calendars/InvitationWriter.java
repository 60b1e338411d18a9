package org.leafward.calendars;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import net.fortuna.ical4j.model.Parameter;
import net.fortuna.ical4j.model.ParameterList;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.parameter.Cn;
import net.fortuna.ical4j.model.parameter.CuType;
import net.fortuna.ical4j.model.parameter.PartStat;
import net.fortuna.ical4j.model.parameter.Role;
import net.fortuna.ical4j.model.parameter.Rsvp;
import net.fortuna.ical4j.model.property.Attendee;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.Organizer;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.Url;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableMethod;
import net.fortuna.ical4j.model.property.immutable.ImmutableStatus;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import org.leafward.calendars.Invitation.Method;

/** Writes invitations as RFC 5545 text with the restrictions of RFC 5546. */
public final class InvitationWriter {

	private InvitationWriter() {
	}

	/**
	 * Writes an invitation. The same invitation gives the same text.
	 * @param invitation what to write
	 * @return folded lines, each ended by CRLF
	 */
	public static String write(Invitation invitation) {
		boolean asks = invitation.method() == Method.REQUEST;
		StringBuilder lines = new StringBuilder("BEGIN:VCALENDAR\r\n");
		for (Property one : List.of(ImmutableVersion.VERSION_2_0, new ProdId("-//Leafward//Workdays//EN"),
				ImmutableCalScale.GREGORIAN, asks ? ImmutableMethod.REQUEST : ImmutableMethod.CANCEL)) {
			lines.append(one);
		}
		lines.append(ZoneText.of(invitation.start().getZone()))
			.append("BEGIN:VEVENT\r\n")
			.append(ZoneText.at("DTSTART", invitation.start()))
			.append(ZoneText.at("DTEND", invitation.end()));
		properties(invitation, asks).forEach(lines::append);
		lines.append("END:VEVENT\r\nEND:VCALENDAR\r\n");
		OctetFoldingWriter writer = new OctetFoldingWriter();
		writer.write(lines.toString());
		return new String(writer.octets(), StandardCharsets.UTF_8);
	}

	private static List<Property> properties(Invitation invitation, boolean asks) {
		List<Property> all = new ArrayList<>(
				List.of(new Uid(PlainText.line(invitation.uid())), new DtStamp(invitation.stamp()),
						new Sequence(invitation.sequence()), new Summary(PlainText.line(invitation.summary())),
						organizer(invitation.organizer()), attendee(invitation, asks)));
		if (!invitation.description().isBlank()) {
			all.add(new Description(PlainText.clean(invitation.description())));
		}
		if (!invitation.location().isBlank()) {
			all.add(new Location(PlainText.line(invitation.location())));
		}
		if (invitation.url() != null) {
			all.add(new Url(URI.create(invitation.url())));
		}
		all.add(asks ? ImmutableStatus.VEVENT_CONFIRMED : ImmutableStatus.VEVENT_CANCELLED);
		all.add(asks ? ImmutableTransp.OPAQUE : ImmutableTransp.TRANSPARENT);
		return all;
	}

	private static Property organizer(Party organizer) {
		return new Organizer(new ParameterList(List.of(name(organizer))), mailto(organizer));
	}

	private static Property attendee(Invitation invitation, boolean asks) {
		List<Parameter> parameters = new ArrayList<>(List.of(name(invitation.attendee()), CuType.INDIVIDUAL,
				Role.REQ_PARTICIPANT, new PartStat(invitation.answer().code())));
		if (asks) {
			parameters.add(Rsvp.TRUE);
		}
		return new Attendee(new ParameterList(parameters), mailto(invitation.attendee()));
	}

	/** A parameter can't hold a double quote whatever is done to it (RFC 5545, 3.2). */
	private static Parameter name(Party party) {
		return new Cn(PlainText.line(party.name()).replace('"', '\u201d'));
	}

	private static URI mailto(Party party) {
		return URI.create("mailto:" + party.address());
	}

}
