using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Everything of a file that is of use, all parts.</summary>
internal sealed class ReadScore
{
    private const int MostParts = 1000;
    private readonly Dictionary<string, ReadPart> _byId = [];
    private readonly NoteCount _notes = new();

    public string? Title { get; set; }

    public List<ReadPart> Parts { get; } = [];

    /// <summary>Our own facts, by name.</summary>
    public Dictionary<string, string> Facts { get; } = [];

    /// <summary>The part of that id; new where the list of parts has none; null when there are too many.</summary>
    public ReadPart? Part(string id, string name)
    {
        if (_byId.TryGetValue(id, out var part))
        {
            return part;
        }

        if (Parts.Count == MostParts)
        {
            return null;
        }

        part = new ReadPart
        {
            Id = id,
            Name = name,
            InScore = _notes,
        };
        _byId[id] = part;
        Parts.Add(part);
        return part;
    }
}

/// <summary>Reads a score, by parts or by bars.</summary>
internal sealed class ScoreReader(XmlWalk walk)
{
    private const int LongestName = 80;
    private const int MostFacts = 20;
    private readonly ReadScore _score = new();

    public Outcome<ReadScore> Read()
    {
        var root = walk.Root();
        if (root is not ("score-partwise" or "score-timewise"))
        {
            return new Fault(
                $"is no MusicXML score but {Quote.Short(root)}",
                walk.Spot,
                "a file whose outermost element is score-partwise or score-timewise"
            );
        }

        var byParts = root == "score-partwise";
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            var fault = (name, byParts) switch
            {
                ("part", true) => ReadPart(),
                ("measure", false) => ReadMeasure(),
                _ => ReadHeader(name),
            };
            if (fault is not null)
            {
                return fault;
            }
        }

        return _score;
    }

    private Fault? ReadHeader(string name)
    {
        switch (name)
        {
            case "work":
                ReadWork();
                break;
            case "movement-title":
                _score.Title = TitleOr(walk.Text(), _score.Title);
                break;
            case "identification":
                ReadIdentification();
                break;
            case "part-list":
                return ReadList();
        }

        return null;
    }

    private void ReadWork()
    {
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            if (name == "work-title")
            {
                _score.Title = TitleOr(_score.Title ?? "", walk.Text());
            }
        }
    }

    private static string? TitleOr(string first, string? second) => first.Length > 0 ? first : second;

    private void ReadIdentification()
    {
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            if (name != "miscellaneous")
            {
                continue;
            }

            for (var inner = walk.Enter(); walk.Next(inner, out var field); )
            {
                var key = walk.Attribute("name");
                if (field == "miscellaneous-field" && _score.Facts.Count < MostFacts)
                {
                    _score.Facts[key] = walk.Text();
                }
            }
        }
    }

    private Fault? ReadList()
    {
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            if (name != "score-part")
            {
                continue;
            }

            var id = walk.Attribute("id");
            var spot = walk.Spot;
            var title = "";
            for (var inner = walk.Enter(); walk.Next(inner, out var field); )
            {
                title = field == "part-name" ? walk.Text() : title;
            }

            if (_score.Part(Cut(id), Cut(title)) is null)
            {
                return TooManyParts(spot);
            }
        }

        return null;
    }

    private Fault? ReadPart()
    {
        if (_score.Part(Cut(walk.Attribute("id")), "") is not { } part)
        {
            return TooManyParts(walk.Spot);
        }

        var reader = new BarReader(walk, part);
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            if (name == "measure" && reader.Read(walk.Attribute("number"), IsImplicit()) is { } fault)
            {
                return fault;
            }
        }

        return null;
    }

    private Fault? ReadMeasure()
    {
        var number = walk.Attribute("number");
        var isImplicit = IsImplicit();
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            if (name != "part")
            {
                continue;
            }

            if (_score.Part(Cut(walk.Attribute("id")), "") is not { } part)
            {
                return TooManyParts(walk.Spot);
            }

            if (new BarReader(walk, part).Read(number, isImplicit) is { } fault)
            {
                return fault;
            }
        }

        return null;
    }

    private bool IsImplicit() => walk.Attribute("implicit") == "yes";

    private static Fault TooManyParts(string spot) => new("more than 1000 parts", spot, "fewer parts");

    private static string Cut(string text)
    {
        var cut = text.Length <= LongestName ? text : text[..LongestName];
        return new string([.. cut.Where(letter => !char.IsControl(letter))]);
    }
}
