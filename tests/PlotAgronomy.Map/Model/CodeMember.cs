namespace PlotAgronomy.Map.Model;

/// <summary>A type, or a member of a type, that the sources declare.</summary>
internal sealed record CodeMember
{
    /// <summary>Gets the compiler's documentation id: the same for a member seen from any project.</summary>
    public required string Id { get; init; }

    public required MemberKind Kind { get; init; }

    public required string Namespace { get; init; }

    /// <summary>Gets the name of the type, or of the type around the member; an inner type as <c>Outer.Inner</c>.</summary>
    public required string Type { get; init; }

    /// <summary>Gets the name of the member: <c>new</c> of a constructor, <c>this[]</c> of an indexer, none of a type.</summary>
    public required string Name { get; init; }

    /// <summary>Gets the types of the parameters in brackets; empty for what has none.</summary>
    public required string Parameters { get; init; }

    /// <summary>Gets the file that declares it; of a type in several files the one that bears its name.</summary>
    public required string File { get; init; }

    public required int Line { get; init; }

    public required Reach Reach { get; init; }

    public bool IsStatic { get; init; }

    /// <summary>Gets a value indicating whether the compiler made it: nobody wrote it down.</summary>
    public bool IsImplicit { get; init; }

    /// <summary>Gets a value indicating whether it fulfils a member of a foreign assembly, whose calls cannot be seen.</summary>
    public bool FulfilsForeign { get; init; }

    internal bool IsPublic => Reach == Reach.Public;

    /// <summary>Gets <c>Type</c> or <c>Type.Member</c>.</summary>
    internal string ShortName => Name.Length == 0 ? Type : $"{Type}.{Name}";

    /// <summary>Gets the short name with its namespace.</summary>
    internal string FullName => Namespace.Length == 0 ? ShortName : $"{Namespace}.{ShortName}";
}
