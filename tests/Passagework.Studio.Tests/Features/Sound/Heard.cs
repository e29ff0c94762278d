using System.Runtime.InteropServices;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Studio.Features.Sound;

namespace Passagework.Studio.Tests.Features.Sound;

/// <summary>Exercises and sounds for the tests of this folder.</summary>
internal static class Heard
{
    /// <summary>An exercise of the library as an intermediate player plays it.</summary>
    public static Realization Line(string id = "groups-of-five-up") =>
        Measurer.Measure(Library.Find(id).OrThrow().Recipe, Player.At(2)).OrThrow().Realization;

    /// <summary>A sound at its own levels.</summary>
    public static PlayedSound Plan(Realization line, SoundWishes wishes) =>
        new SoundPlanner().Plan(line, wishes, new KeptLevels()).OrThrow();

    /// <summary>Samples of a stretch.</summary>
    public static float[] Pcm(PlayedSound sound, long first, int count) => Floats(sound.Pcm(first, count));

    /// <summary>Samples as numbers.</summary>
    public static float[] Floats(byte[] bytes) => MemoryMarshal.Cast<byte, float>(bytes).ToArray();
}
