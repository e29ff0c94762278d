namespace Passagework.Studio.Features.Importing;

/// <summary>Holds the few files of which a line has still to be chosen.</summary>
internal sealed class WaitingUploads
{
    private const int Most = 4;
    private readonly Lock _guard = new();
    private readonly List<(string Ticket, Upload Upload)> _waiting = [];

    /// <summary>Keeps a file; the one that has waited longest makes room.</summary>
    /// <returns>What to ask for it with.</returns>
    public string Keep(Upload upload)
    {
        var ticket = Guid.NewGuid().ToString("n");
        lock (_guard)
        {
            if (_waiting.Count == Most)
                _waiting.RemoveAt(0);

            _waiting.Add((ticket, upload));
        }

        return ticket;
    }

    /// <summary>The file; null when it waits no longer.</summary>
    public Upload? Find(string? ticket)
    {
        lock (_guard)
            return _waiting.Find(one => one.Ticket == ticket).Upload;
    }

    /// <summary>Forgets a file that was read.</summary>
    public void Forget(string? ticket)
    {
        lock (_guard)
            _waiting.RemoveAll(one => one.Ticket == ticket);
    }
}
