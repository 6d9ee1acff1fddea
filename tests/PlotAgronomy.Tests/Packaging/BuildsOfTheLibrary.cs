namespace PlotAgronomy.Tests.Packaging;

/// <summary>Tests that build the library, one after the other: they share its bin folders and one package.</summary>
[CollectionDefinition(DotnetCommand.BuildsOfTheLibrary)]
public sealed class BuildsOfTheLibrary : ICollectionFixture<PackedLibrary>;
