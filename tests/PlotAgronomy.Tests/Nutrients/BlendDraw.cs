using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>A drawn blend.</summary>
public sealed record BlendDraw(ImmutableArray<KindShare> Kinds);
