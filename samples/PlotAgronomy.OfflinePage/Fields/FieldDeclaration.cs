using System.Text.RegularExpressions;

namespace PlotAgronomy.OfflinePage.Fields;

/// <summary>One field, as the plan file's schema declares it.</summary>
/// <param name="Name">Name in the file.</param>
/// <param name="Sort">How it is typed.</param>
/// <param name="Meaning">One sentence.</param>
public sealed partial record FieldDeclaration(string Name, FieldSort Sort, string Meaning)
{
    internal bool IsRequired { get; init; }

    internal IReadOnlyList<string> Examples { get; init; } = [];

    internal IReadOnlyList<string> Choices { get; init; } = [];

    internal string? Low { get; init; }

    internal string? High { get; init; }

    /// <summary>Gets the name of the part that stands in it, or in each item of it.</summary>
    internal string? PartName { get; init; }

    /// <summary>Gets what an item of a list of plain values is.</summary>
    internal FieldDeclaration? Item { get; init; }

    /// <summary>Gets the sentence below the label: what it is, what it may be.</summary>
    internal string Hint =>
        Sort is FieldSort.Number && High is not null ? $"{Words} From {Low} to {High}."
        : Examples.Count > 0 ? $"{Words} Such as {string.Join(" or ", Examples)}."
        : Words;

    /// <summary>The sentence with the labels of the fields that it names, in place of their names.</summary>
    private string Words =>
        Quoted().Replace(Meaning, quoted => Unquoted(quoted.Groups[1].Value));

    private static string Unquoted(string word) => FieldName().IsMatch(word) ? FieldLabels.Quoted(word) : word;

    [GeneratedRegex("`([^`]*)`")]
    private static partial Regex Quoted();

    [GeneratedRegex("^[a-z][A-Za-z]*$")]
    private static partial Regex FieldName();
}
