using System.Collections.Immutable;

namespace Passagework.Notation;

/// <summary>Reads repeats and endings.</summary>
internal sealed class BarlineReader(XmlWalk walk, ReadPart part)
{
    private const int MostTimes = 99;

    public void Read()
    {
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            switch (name)
            {
                case "repeat" when walk.Attribute("direction") == "forward":
                    part.Bar.RepeatStarts = true;
                    break;
                case "repeat":
                    part.Bar.RepeatTimes = Math.Clamp(
                        ReadNumbers.Whole(walk.Attribute("times")) ?? 2,
                        1,
                        MostTimes
                    );
                    break;
                case "ending" when walk.Attribute("type") == "start":
                    part.Bar.Ending = Turns(walk.Attribute("number"));
                    break;
                case "ending":
                    part.Bar.EndingStops = true;
                    break;
                case "segno":
                case "coda":
                    part.Remark($"'{name}' left out");
                    break;
            }
        }
    }

    private static ImmutableArray<int> Turns(string number) =>
        [
            .. number
                .Split(',')
                .Select(turn => ReadNumbers.Whole(turn.Trim()))
                .OfType<int>()
                .Where(turn => turn is >= 1 and <= MostTimes)
                .Distinct(),
        ];
}
