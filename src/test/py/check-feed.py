"""Reads feeds with what calendars on Linux are made of, and prints what each sees as JSON.

  python3 check-feed.py <file> <engine>...

The file holds one document after the other, parted by a NUL. For each engine there is a list
with, for each document, the list of what it sees in it. Debian packages: khal (a terminal's
calendar), python3-icalendar (which servers and home automation use) and libical3 (behind
several desktops; called by ctypes, so that nothing has to be compiled).
"""
import ctypes
import json
import sys


def by_icalendar(text):
    import icalendar
    calendar = icalendar.Calendar.from_ical(text)
    if calendar.errors:
        raise ValueError(calendar.errors)
    seen = []
    for one in calendar.subcomponents:
        if one.errors:
            raise ValueError(one.errors)
        end = 'DUE' if one.name == 'VTODO' else 'DTEND'
        seen.append({
            'kind': one.name, 'uid': str(one['UID']), 'summary': str(one['SUMMARY']),
            'description': str(one['DESCRIPTION']), 'from': day(one.get('DTSTART')), 'to': day(one.get(end)),
            'status': str(one['STATUS']), 'alarms': sum(part.name == 'VALARM' for part in one.subcomponents)})
    return seen


def day(value):
    return value.dt.isoformat() if value is not None else None


def by_khal(text):
    """Its last day is the day itself, so one is added; it shows no to-dos."""
    import datetime
    import pytz
    from khal.icalendar import cal_from_ics
    from khal.khalendar.event import Event
    zone = pytz.timezone('Pacific/Auckland')
    locale = {'default_timezone': zone, 'local_timezone': zone}
    seen = []
    for one in cal_from_ics(text).walk('VEVENT'):
        event = Event.fromVEvents([one], locale=locale)
        if not event.allday:
            raise ValueError(event.uid + ' has a time')
        seen.append({
            'kind': 'VEVENT', 'uid': str(event.uid), 'summary': str(event.summary),
            'description': str(event.description), 'from': event.start.isoformat(),
            'to': (event.end + datetime.timedelta(days=1)).isoformat(), 'status': str(event.status),
            'alarms': len(event.alarms)})
    return seen


class Libical:
    """A few functions of libical's C interface."""

    def __init__(self):
        self.library = ctypes.CDLL('libical.so.3')
        for name, result in (('component_new_from_string', ctypes.c_void_p),
                             ('component_get_first_component', ctypes.c_void_p),
                             ('component_get_next_component', ctypes.c_void_p),
                             ('component_get_first_property', ctypes.c_void_p),
                             ('component_get_uid', ctypes.c_char_p), ('component_get_summary', ctypes.c_char_p),
                             ('component_get_description', ctypes.c_char_p),
                             ('property_get_value_as_string', ctypes.c_char_p),
                             ('component_string_to_kind', ctypes.c_int), ('property_string_to_kind', ctypes.c_int),
                             ('component_count_errors', ctypes.c_int), ('component_free', None)):
            getattr(self.library, 'ical' + name).restype = result
        self.library.icalrestriction_check.restype = ctypes.c_int

    def call(self, name, *arguments):
        return getattr(self.library, 'ical' + name)(
            *(ctypes.c_void_p(one) if index == 0 and isinstance(one, int) else one
              for index, one in enumerate(arguments)))

    def kind(self, name, of='component'):
        return getattr(self.library, 'ical%s_string_to_kind' % of)(name)

    def value(self, component, name):
        found = self.call('component_get_first_property', component, self.kind(name, 'property'))
        return self.call('property_get_value_as_string', found).decode() if found else None

    def each(self, parent, name):
        kind = self.kind(name)
        one = self.call('component_get_first_component', parent, kind)
        while one:
            yield one
            one = self.call('component_get_next_component', parent, kind)

    def day(self, component, name):
        value = self.value(component, name)
        return '-'.join((value[:4], value[4:6], value[6:])) if value else None

    def __call__(self, text):
        calendar = self.call('component_new_from_string', text.encode())
        try:
            # The count covers what is inside; the other looks at properties by RFC 5545 and sets it.
            if self.call('component_count_errors', calendar) or not self.call('restriction_check', calendar) \
                    or self.call('component_count_errors', calendar):
                raise ValueError('libical finds errors')
            return [{
                'kind': name.decode(), 'uid': self.call('component_get_uid', one).decode(),
                'summary': self.call('component_get_summary', one).decode(),
                'description': self.call('component_get_description', one).decode(),
                'from': self.day(one, b'DTSTART'), 'to': self.day(one, b'DUE' if name == b'VTODO' else b'DTEND'),
                'status': self.value(one, b'STATUS'), 'alarms': sum(1 for _ in self.each(one, b'VALARM'))}
                for name in (b'VEVENT', b'VTODO') for one in self.each(calendar, name)]
        finally:
            self.call('component_free', calendar)


ENGINES = {'icalendar': lambda: by_icalendar, 'khal': lambda: by_khal, 'libical': Libical}

if __name__ == '__main__':
    with open(sys.argv[1], encoding='utf-8', newline='') as file:
        documents = file.read().split('\0')
    output = {}
    for engine in sys.argv[2:]:
        read = ENGINES[engine]()
        output[engine] = [read(document) for document in documents]
    json.dump(output, sys.stdout)
