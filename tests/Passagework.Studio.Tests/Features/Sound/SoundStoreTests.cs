using Passagework.Foundation;
using Passagework.Sound.Performance;
using Passagework.Studio.Features.Sound;

namespace Passagework.Studio.Tests.Features.Sound;

public sealed class SoundStoreTests
{
    private static readonly PlayedSound Sound = Heard.Plan(Heard.Line(), new SoundWishes { Loops = false });

    [Fact]
    public void A_sound_that_nobody_asks_for_is_let_go()
    {
        var clock = new Clock();
        var store = new SoundStore(clock);
        var (asked, left) = (store.Add(Sound), store.Add(Sound));

        clock.Forward(SoundStore.Longest * 0.7);
        Assert.NotNull(store.Find(asked));
        clock.Forward(SoundStore.Longest * 0.7);

        Assert.NotNull(store.Find(asked));
        Assert.Null(store.Find(left));
    }

    [Fact]
    public void The_number_of_sounds_is_bounded_and_the_one_asked_for_longest_ago_goes()
    {
        var clock = new Clock();
        var store = new SoundStore(clock);
        var names = new List<string>();
        for (var i = 0; i < SoundStore.Most; i++)
        {
            names.Add(store.Add(Sound));
            clock.Forward(TimeSpan.FromSeconds(1));
        }

        store.Find(names[0]);
        store.Add(Sound);

        Assert.NotNull(store.Find(names[0]));
        Assert.Null(store.Find(names[1]));
        Assert.Equal(SoundStore.Most, names.Distinct().Count());
    }

    [Fact]
    public void A_page_keeps_the_sound_that_is_heard_however_many_others_are_made_meanwhile()
    {
        var clock = new Clock();
        var store = new SoundStore(clock);
        using var desk = new PlayDesk(new SoundPlanner(), store);
        var names = new List<string>();
        for (var i = 0; i < 2 * PlayDesk.Kept; i++)
        {
            names.Add(desk.Plan(Heard.Line(), new SoundWishes { Bpm = 60 + i }).OrThrow().Id);
            clock.Forward(TimeSpan.FromMilliseconds(30));
            store.Find(names[0]);
        }

        Assert.NotNull(store.Find(names[0]));
        Assert.Null(store.Find(names[1]));
        Assert.Equal(PlayDesk.Kept, names.Count(name => store.Find(name) is not null));
    }

    [Fact]
    public void A_page_takes_its_sounds_along_when_it_goes()
    {
        var store = new SoundStore(TimeProvider.System);
        var desk = new PlayDesk(new SoundPlanner(), store);
        var name = desk.Plan(Heard.Line(), new SoundWishes()).OrThrow().Id;

        desk.Dispose();

        Assert.Null(store.Find(name));
    }

    [Fact]
    public void Only_other_notes_count_as_other_music()
    {
        using var desk = new PlayDesk(new SoundPlanner(), new SoundStore(TimeProvider.System));

        Assert.Equal(
            [1, 1, 1, 2, 3],
            new[]
            {
                desk.Plan(Heard.Line(), new SoundWishes()),
                desk.Plan(Heard.Line(), new SoundWishes { Bpm = 90 }),
                desk.Plan(Heard.Line(), new SoundWishes { Bars = new BarRange(1, 1) }),
                desk.Plan(Heard.Line("groups-of-four-up"), new SoundWishes()),
                desk.Plan(Heard.Line(), new SoundWishes()),
            }.Select(handle => handle.OrThrow().Music)
        );
    }
}
