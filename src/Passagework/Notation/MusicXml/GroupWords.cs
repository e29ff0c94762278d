namespace Passagework.Notation;

/// <summary>The words by which groups of notes are told in a file.</summary>
internal static class GroupWords
{
    /// <summary>The hierarchy that the groupings belong to.</summary>
    public const string MemberOf = "cells";

    /// <summary>The feature that holds the group's number.</summary>
    public const string Feature = "group";
}
