namespace PlotAgronomy.Tests.Support;

/// <summary>Finds files of the checkout the tests were built from.</summary>
internal static class Repository
{
    internal static string Root { get; } = FindRoot();

    internal static string PathOf(string relative) => Path.Combine(Root, relative);

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "PlotAgronomy.sln")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException("The tests must run inside a checkout.");
    }
}
