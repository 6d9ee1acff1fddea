using System.Collections.Immutable;
using System.Globalization;

namespace PlotAgronomy.Records;

/// <summary>Lists of counts.</summary>
internal static class Whole
{
    internal static ImmutableArray<int> List(FieldReader from, string name) =>
        from.Try<ImmutableArray<int>>(name, () =>
            [.. from.List(name).Select(t => int.Parse(t, NumberStyles.None, CultureInfo.InvariantCulture))]
        );
}
