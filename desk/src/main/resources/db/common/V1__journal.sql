-- The journal: every change ever made, in one order. The chain of hashes runs over the whole table by position.
create table journal (
    position        bigint  not null primary key,
    stream          text    not null,
    seq             bigint  not null check (seq >= 1),
    at              text    not null,
    who             text    not null,
    bench           text    not null,
    kind            text    not null,
    version         integer not null check (version >= 1),
    edit            text    not null,
    prev_hash       text    not null,
    hash            text    not null,
    idempotency_key text    not null unique,
    unique (stream, seq)
);

-- Names, addresses and telephones live here and nowhere else; edits carry only the id, so a person can be forgotten.
create table person (
    id        text not null primary key,
    name      text not null,
    address   text not null,
    telephone text not null,
    email     text not null
);

-- What photos and sounds there are; the bytes lie in a folder beside SQLite, in blob_content in PostgreSQL.
create table blob (
    sha256 text   not null primary key,
    size   bigint not null check (size >= 0),
    media  text   not null,
    at     text   not null
);

-- A projection: one line a job for the shelf and the search. It can be thrown away and rebuilt from the journal.
create table card (
    job      text   not null primary key,
    seq      bigint not null,
    position bigint not null,
    title    text   not null,
    voice    text   not null,
    serial   text   not null,
    owner    text   not null,
    stage    text   not null,
    readings integer not null,
    findings integer not null,
    words    text   not null
);
