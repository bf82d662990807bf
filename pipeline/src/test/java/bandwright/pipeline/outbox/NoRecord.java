package bandwright.pipeline.outbox;

/** Of an outbox that nobody remembers. */
final class NoRecord implements RunRecord {
    @Override
    public void begin() {}

    @Override
    public void keep() {}

    @Override
    public void takeBack() {}
}
