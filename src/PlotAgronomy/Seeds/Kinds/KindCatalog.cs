using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy;

/// <summary>The kinds that can be named. A catalog never changes: adding kinds gives a new one.</summary>
/// <example>
/// <code>
/// var clover = KindCatalog.Standard.Find("ladino");
/// Console.WriteLine(clover.CommonName);
/// // Ladino clover (large white clover)
/// Console.WriteLine(KindCatalog.Standard.TryFind("buckwheet", out _, out string problem));
/// // False
/// Console.WriteLine(problem);
/// // No kind is called 'buckwheet'. Near it: Buckwheat [buckwheat]; Winter wheat [winter-wheat]; Sugar beet [sugar-beet].
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed class KindCatalog
{
    private const int SuggestionsShown = 3;
    private static readonly Lazy<KindCatalog> Published = new(() => new KindCatalog(PublishedKinds.List()));

    private readonly ImmutableArray<ListedKind> listed;
    private readonly Dictionary<string, ListedKind> byId;
    private readonly Lazy<KindNameIndex> names;
    private readonly Lazy<ImmutableArray<CropKind>> kinds;

    private KindCatalog(ImmutableArray<ListedKind> listed)
    {
        this.listed = listed;
        byId = listed.ToDictionary(k => k.Id, StringComparer.OrdinalIgnoreCase);
        names = new(() => new KindNameIndex(listed));
        kinds = new(() => [.. listed.Select(k => k.Kind)]);
    }

    /// <summary>Gets the most words that any name has, as a person may write it.</summary>
    internal int MostWordsInAName => names.Value.MostWords;

    /// <summary>Gets the published kinds.</summary>
    public static KindCatalog Standard => Published.Value;

    /// <summary>Gets all kinds.</summary>
    public IReadOnlyList<CropKind> Kinds => kinds.Value;

    /// <summary>This catalog with kinds of the user's own: one with a known id, blind to case, takes the place of that
    /// kind.</summary>
    /// <param name="own">Kinds of the user's own; they are marked theirs.</param>
    /// <returns>The new catalog.</returns>
    /// <exception cref="ArgumentException">Two of them share an id, or an id or name is blank.</exception>
    public KindCatalog With(params ReadOnlySpan<CropKind> own)
    {
        var all = listed.ToDictionary(k => k.Id, StringComparer.OrdinalIgnoreCase);
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var kind in own)
        {
            ArgumentNullException.ThrowIfNull(kind, nameof(own));
            Guard.NotBlank(kind.CommonName, nameof(own));
            if (!seen.Add(Guard.NotBlank(kind.Id, nameof(own))))
            {
                throw new ArgumentException($"Two of the kinds have the id '{kind.Id}'.", nameof(own));
            }

            all[kind.Id] = ListedKind.Of(kind with { IsUsersOwn = true });
        }

        return new KindCatalog([.. all.Values]);
    }

    /// <summary>Finds a kind by id, common, scientific or market-class name, blind to case, plurals and the order of
    /// words.</summary>
    /// <param name="name">Name as people write it: <c>Clover, ladino</c>, <c>winter peas</c>, <c>Secale cereale</c>.</param>
    /// <returns>The kind.</returns>
    /// <exception cref="AmbiguousKindException">The name fits several kinds; they are listed.</exception>
    /// <exception cref="KeyNotFoundException">The name fits none; near ones are suggested.</exception>
    public CropKind Find(string name)
    {
        var fitting = Candidates(Guard.NotBlank(name));
        return fitting.Length switch
        {
            1 => fitting[0],
            0 => throw new KeyNotFoundException(Unknown(name)),
            _ => throw new AmbiguousKindException(Ambiguous(name, fitting), fitting),
        };
    }

    /// <summary>Looks for a kind by a name a person wrote; see <see cref="Find"/>.</summary>
    /// <param name="name">Name.</param>
    /// <param name="kind">The kind, when exactly one fits.</param>
    /// <param name="problem">What is wrong, when none or several fit; else empty.</param>
    /// <returns>True when exactly one kind fits.</returns>
    public bool TryFind(string? name, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out CropKind? kind, out string problem)
    {
        var fitting = string.IsNullOrWhiteSpace(name) ? [] : Candidates(name);
        kind = fitting.Length == 1 ? fitting[0] : null;
        problem = fitting.Length switch
        {
            1 => "",
            0 => Unknown(name ?? ""),
            _ => Ambiguous(name!, fitting),
        };
        return kind is not null;
    }

    /// <summary>All kinds a name fits. An id goes before a name in full, and that before one in part.</summary>
    /// <param name="name">Name.</param>
    /// <returns>The kinds, in the order of the catalog.</returns>
    public ImmutableArray<CropKind> Candidates(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return byId.TryGetValue(name.Trim(), out var called) ? [called.Kind] : [.. names.Value.Fitting(name).Select(k => k.Kind)];
    }

    private static string Ambiguous(string name, ImmutableArray<CropKind> fitting) =>
        $"'{name}' may be any of: {string.Join("; ", fitting.Select(k => $"{k.CommonName} [{k.Id}]"))}. Name one of them.";

    private string Unknown(string name)
    {
        var near = names.Value.Near(name).Take(SuggestionsShown).Select(k => k.Kind);
        return $"No kind is called '{name}'. Near it: {string.Join("; ", near.Select(k => $"{k.CommonName} [{k.Id}]"))}.";
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(listed.Length, 0)} kinds";
}
