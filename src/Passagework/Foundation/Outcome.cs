namespace Passagework.Foundation;

/// <summary>What came of a question put by a person, file or recording: a value, or the reason there is none.</summary>
public abstract record Outcome<T>
{
    private Outcome() { }

    /// <summary>The answer.</summary>
    public sealed record Done(T Value) : Outcome<T>;

    /// <summary>There is no answer, and why.</summary>
    public sealed record Refused(Fault Fault) : Outcome<T>;

    /// <summary>A value is its own outcome.</summary>
    public static implicit operator Outcome<T>(T value) => new Done(value);

    /// <summary>A fault is an outcome too.</summary>
    public static implicit operator Outcome<T>(Fault fault) => new Refused(fault);

    /// <summary>Whether there is a value; exactly one of the two is set.</summary>
    public bool TryGet(
        [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out T? value,
        [System.Diagnostics.CodeAnalysis.NotNullWhen(false)] out Fault? fault
    )
    {
        value = this is Done done ? done.Value : default;
        fault = (this as Refused)?.Fault;
        return fault is null;
    }

    /// <summary>Goes on with the value, or passes the fault along.</summary>
    public Outcome<TNext> Then<TNext>(Func<T, Outcome<TNext>> next) =>
        this switch
        {
            Done done => next(done.Value),
            Refused refused => refused.Fault,
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>The value; for callers that know the question has an answer.</summary>
    /// <exception cref="InvalidOperationException">There is none; the message is the fault.</exception>
    public T OrThrow() =>
        this is Done done
            ? done.Value
            : throw new InvalidOperationException(((Refused)this).Fault.ToString());
}
