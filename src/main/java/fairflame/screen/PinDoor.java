package fairflame.screen;

import fairflame.screen.pin.PinWork;
import fairflame.visit.Pins;
import fairflame.visit.Workplace;

/** The part of the door for the digits of the person at work. */
final class PinDoor implements PinWork {
    private final Pins pins;
    private final String person;
    private final boolean demo;

    PinDoor(Workplace workplace, boolean demo) {
        this.pins = new Pins(workplace, demo);
        this.person = workplace.who();
        this.demo = demo;
    }

    @Override
    public String person() {
        return person;
    }

    @Override
    public State state() {
        if (pins.has(person)) {
            return State.OWN;
        }
        return demo ? State.DEMO : State.NONE;
    }

    @Override
    public Answer opens(String digits) {
        var tried = pins.opens(person, digits);
        // A part of a second is waited out as a whole one.
        return new Answer(tried.opens(), tried.pause().plusMillis(999).toSeconds());
    }

    @Override
    public void change(String old, String fresh) {
        pins.change(person, old, fresh);
    }
}
