-- In which language a mail is written, so that programs that read aloud know.
alter table workdays.message add column language text not null default 'en';
