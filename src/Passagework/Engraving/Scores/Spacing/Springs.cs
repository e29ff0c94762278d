namespace Passagework.Engraving.Scores;

/// <summary>One distance of a system: it stretches with the others but never below its rod.</summary>
/// <param name="Natural">Distance where nothing is stretched; 0 for one that never stretches.</param>
/// <param name="Rod">Least distance, so that ink stays apart.</param>
internal readonly record struct Spring(double Natural, double Rod)
{
    /// <summary>Its length when all are stretched by a factor.</summary>
    public double At(double stretch) => Math.Max(Rod, stretch * Natural);
}

/// <summary>Justification: one stretch for a whole system.</summary>
internal static class Springs
{
    /// <summary>The factor f with Σ max(rod, f · natural) = room; 0 where the rods alone fill it or more.</summary>
    public static double Stretch(ReadOnlySpan<Spring> springs, double room)
    {
        var loosest = springs.ToArray();
        // A spring leaves its rod where f passes rod / natural: in that order the sum is known piece by piece.
        Array.Sort(loosest, (a, b) => Freed(a).CompareTo(Freed(b)));
        var rods = loosest.Sum(spring => spring.Rod);
        var natural = 0.0;
        for (var next = 0; next < loosest.Length; next++)
        {
            var freed = Freed(loosest[next]);
            if (double.IsPositiveInfinity(freed) || room <= rods + (freed * natural))
            {
                break;
            }

            rods -= loosest[next].Rod;
            natural += loosest[next].Natural;
        }

        return natural > 0 ? Math.Max(0, (room - rods) / natural) : 0;
    }

    private static double Freed(Spring spring) =>
        spring.Natural > 0 ? spring.Rod / spring.Natural : double.PositiveInfinity;
}
