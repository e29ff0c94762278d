using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Cli;

/// <summary>A player as named on the command line: a level, or a file.</summary>
/// <param name="Name">The level's name, or the name of the file.</param>
/// <param name="Player">The hands.</param>
internal sealed record PlayerSource(string Name, Player Player)
{
    public static Outcome<PlayerSource> Find(string name, Terminal terminal)
    {
        if (!File.Exists(name) && !name.EndsWith(".json", StringComparison.OrdinalIgnoreCase))
        {
            return PlayerJson.ReadLevel(name).TryGet(out var player, out var fault)
                ? new PlayerSource(player.LevelText, player)
                : fault.At("--player");
        }

        return InputFile
            .ReadText(name, terminal)
            .Then(PlayerJson.Read)
            .Then<PlayerSource>(read => new PlayerSource(Path.GetFileNameWithoutExtension(name), read));
    }
}
