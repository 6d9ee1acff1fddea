using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>A kind as a catalog lists it: by its names. Its figures are read when it is asked for.</summary>
internal sealed class ListedKind(string id, ImmutableArray<string> names, Func<CropKind> read)
{
    private readonly Lazy<CropKind> kind = new(read);

    internal string Id => id;

    /// <summary>All names it answers to.</summary>
    internal ImmutableArray<string> Names => names;

    internal CropKind Kind => kind.Value;

    internal static ListedKind Of(CropKind kind) =>
        new(
            kind.Id,
            KindNames.Of(kind.Id, kind.CommonName, kind.ShortName, kind.ScientificName, kind.OtherNames),
            () => kind
        );
}
