using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Text;

namespace PlotAgronomy.Records;

/// <summary>One entry of the plot book: what was done or seen on a plot on a date. What is not stated stays null.</summary>
/// <remarks>Entries are never changed. An entry that <see cref="Corrects"/> another takes its place.</remarks>
[JsonConverter(typeof(NotForJson))]
public abstract record BookEntry
{
    private protected BookEntry() { }

    /// <summary>Gets the name of the entry, such as <c>anna-12</c>; null until the book has taken it.</summary>
    public string? Id
    {
        get;
        init => field = value is null ? null : EntryId.Checked(value, nameof(Id)).ToString();
    }

    /// <summary>Gets the date on which it was done or seen.</summary>
    public required DateOnly On { get; init; }

    /// <summary>Gets the name of the plot.</summary>
    public required string Plot
    {
        get;
        init => field = Guard.NotBlank(value, nameof(Plot)).Trim();
    }

    /// <summary>Gets the name of the entry whose place this one takes; null for a first entry.</summary>
    public string? Corrects
    {
        get;
        init => field = value is null ? null : EntryId.Checked(value, nameof(Corrects)).ToString();
    }

    /// <summary>Gets words of one's own.</summary>
    public string? Note
    {
        get;
        init => field = value is null ? null : Guard.NotBlank(value, nameof(Note));
    }

    /// <summary>Gets the file names of pictures.</summary>
    public ImmutableArray<string> Pictures
    {
        get;
        init => field = Guard.Listed(value, nameof(Pictures)).All(IsFileName) ? value : throw NoFileName();
    } = [];

    /// <summary>This entry as the correction of another one.</summary>
    /// <param name="id">Name of the entry whose place it takes, such as <c>anna-12</c>.</param>
    /// <returns>An entry that no book has taken yet.</returns>
    /// <exception cref="ArgumentException">No name of an entry.</exception>
    public BookEntry InPlaceOf(string id) => this with { Id = null, Corrects = Guard.NotBlank(id) };

    /// <summary>Gets the word that tells what sort of entry it is.</summary>
    internal abstract string What { get; }

    /// <summary>Entries are equal to themselves alone.</summary>
    /// <param name="other">Another entry.</param>
    /// <returns>True when it is the same object.</returns>
    public virtual bool Equals(BookEntry? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>What it is, when and where.</summary>
    /// <returns>Text such as <c>2026-04-02 north: lime</c>.</returns>
    public sealed override string ToString() => $"{FieldWriter.Of(On)} {Plot}: {What}";

    /// <summary>Prints what <see cref="ToString"/> says; the generated text would print quantities by the culture.</summary>
    /// <param name="builder">Text to add to.</param>
    /// <returns>True, for something was added.</returns>
    protected virtual bool PrintMembers(StringBuilder builder)
    {
        ArgumentNullException.ThrowIfNull(builder);
        builder.Append(ToString());
        return true;
    }

    /// <summary>Writes the fields that entries of this sort have of their own.</summary>
    internal abstract void Write(FieldWriter to);

    private static bool IsFileName(string name) => !string.IsNullOrWhiteSpace(name) && !name.Contains(FieldText.ListMark);

    private static ArgumentException NoFileName() =>
        new($"A file name is not blank and holds no '{FieldText.ListMark}'.", nameof(Pictures));
}
