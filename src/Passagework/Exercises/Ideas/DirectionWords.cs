namespace Passagework.Exercises.Ideas;

/// <summary>Which way a line goes, in words.</summary>
internal static class DirectionWords
{
    /// <summary>Such as <c>rising</c>.</summary>
    public static string Of(Direction direction) =>
        direction switch
        {
            Direction.Up => "rising",
            Direction.Down => "falling",
            Direction.UpAndDown => "up and down",
            _ => "down and up",
        };
}
