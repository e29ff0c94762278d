using System.Security.Cryptography;

namespace Passagework.Studio.Features.Sound;

/// <summary>The sounds that pages play at the moment, under names that nobody can guess.</summary>
internal sealed class SoundStore(TimeProvider time)
{
    /// <summary>How many are kept; each holds about a megabyte.</summary>
    public const int Most = 48;

    /// <summary>How long one is kept that nobody asks for.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromMinutes(30);

    private const int NameBytes = 16;
    private readonly Lock _one = new();
    private readonly Dictionary<string, (PlayedSound Sound, DateTimeOffset Asked)> _sounds = [];

    /// <summary>Keeps a sound; the one that was not asked for longest makes room.</summary>
    /// <returns>Its name.</returns>
    public string Add(PlayedSound sound)
    {
        var name = RandomNumberGenerator.GetHexString(2 * NameBytes, lowercase: true);
        lock (_one)
        {
            DropOld();
            if (_sounds.Count >= Most)
            {
                _sounds.Remove(_sounds.MinBy(one => one.Value.Asked).Key);
            }

            _sounds[name] = (sound, time.GetUtcNow());
        }

        return name;
    }

    /// <summary>The sound of that name; null when there is none any more.</summary>
    public PlayedSound? Find(string name)
    {
        lock (_one)
        {
            DropOld();
            if (!_sounds.TryGetValue(name, out var found))
            {
                return null;
            }

            _sounds[name] = (found.Sound, time.GetUtcNow());
            return found.Sound;
        }
    }

    /// <summary>Lets go of all but some of these: of those that nobody asked for longest, and takes them off the list.</summary>
    public void Keep(List<string> names, int most)
    {
        lock (_one)
        {
            names.RemoveAll(name => !_sounds.ContainsKey(name));
            foreach (var name in names.OrderByDescending(name => _sounds[name].Asked).Skip(most).ToList())
            {
                _sounds.Remove(name);
                names.Remove(name);
            }
        }
    }

    /// <summary>Lets go of a sound.</summary>
    public void Remove(string name)
    {
        lock (_one)
        {
            _sounds.Remove(name);
        }
    }

    private void DropOld()
    {
        var before = time.GetUtcNow() - Longest;
        foreach (var name in _sounds.Where(one => one.Value.Asked < before).Select(one => one.Key).ToList())
        {
            _sounds.Remove(name);
        }
    }
}
