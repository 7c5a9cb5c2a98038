create function the_journal_only_grows() returns trigger language plpgsql as $$
begin
    raise exception 'the journal only grows: an edit is never changed or taken out';
end
$$;

create trigger journal_grows before update or delete or truncate on journal
    for each statement execute function the_journal_only_grows();

create table blob_content (
    sha256  text  not null primary key references blob (sha256),
    content bytea not null
);
