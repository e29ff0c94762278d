namespace Passagework.Engraving.Fonts;

/// <summary>The font files and their licences, as built into the engine.</summary>
internal static class FontResource
{
    public static byte[] Read(string name)
    {
        using var stream =
            typeof(FontResource).Assembly.GetManifestResourceStream("fonts/" + name)
            ?? throw new InvalidOperationException($"The engine was built without fonts/{name}.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
