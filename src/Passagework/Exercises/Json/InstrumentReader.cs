using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Exercises;

/// <summary>Reads <c>instrument</c>.</summary>
internal static class InstrumentReader
{
    public static Fretboard Read(JsonCursor cursor)
    {
        var fields = JsonFields.Of(cursor, RecipeFields.Instrument);
        var usual = Fretboard.Standard;
        var (nut, bridge) = fields.Optional("stringSpacingMm") is { } spacing
            ? Spacing(spacing)
            : (null, null);
        return new Fretboard
        {
            Tuning = fields.Optional("tuning") is { } tuning
                ? tuning.Take(Tuning.Read(tuning.Text())) ?? usual.Tuning
                : usual.Tuning,
            Frets = fields.Optional("frets")?.Whole() ?? usual.Frets,
            Capo = fields.Optional("capo")?.Whole() ?? usual.Capo,
            ScaleLengthsMm = fields.Optional("scaleLengthMm") is { } length ? Lengths(length) : [],
            NutSpacingMm = nut,
            BridgeSpacingMm = bridge,
        };
    }

    private static ImmutableArray<double> Lengths(JsonCursor cursor) =>
        cursor.IsList ? cursor.List(item => item.Number()) : [cursor.Number()];

    private static (double? Nut, double? Bridge) Spacing(JsonCursor cursor)
    {
        var both = cursor.List(item => item.Number());
        if (both.Length == 2)
        {
            return (both[0], both[1]);
        }

        cursor.Refuse(Bounds.Entries(both.Length), "[at the nut, at the bridge] such as [7.0, 10.5]");
        return (null, null);
    }
}
