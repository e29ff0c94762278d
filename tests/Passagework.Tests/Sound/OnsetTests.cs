using CsCheck;
using Passagework.Sound;
using Passagework.Tests.Sound.Measuring;

namespace Passagework.Tests.Sound;

/// <summary>Notes are heard when they are planned, between samples too.</summary>
public sealed class OnsetTests
{
    private static readonly StringAction[] Strokes =
    [
        StringAction.Down,
        StringAction.Up,
        StringAction.Thumb,
        StringAction.Finger,
        StringAction.Dead,
    ];

    [Theory]
    [InlineData(GuitarSound.CleanElectric)]
    [InlineData(GuitarSound.SteelString)]
    [InlineData(GuitarSound.Nylon)]
    [InlineData(GuitarSound.DrivenElectric)]
    public void Strokes_sound_within_a_fifth_of_a_millisecond_of_the_plan(GuitarSound sound) =>
        Gen.Select(Gen.Int[1, 6], Gen.Int[0, 22], Gen.Double[0.02, 0.03], Gen.Int[0, 4], Gen.Double[0.2, 1])
            .Sample(
                (s, fret, seconds, stroke, strength) =>
                {
                    var note = Plucks.Pluck(s, fret, seconds) with
                    {
                        Action = Strokes[stroke],
                        Strength = strength,
                    };
                    var samples = Plucks.Render(sound, 0.08, note);
                    var heard = Tone.Onset(samples, Plucks.Rate, 0) / (double)Plucks.Rate;
                    Assert.True(
                        Math.Abs(heard - seconds) <= 2e-4,
                        $"{note.Action} {s}/{fret} {strength}: {1000 * (heard - seconds):F3} ms"
                    );
                },
                iter: 300,
                threads: 1
            );
}
