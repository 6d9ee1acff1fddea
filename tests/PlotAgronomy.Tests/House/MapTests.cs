using PlotAgronomy.Map.Layout;
using PlotAgronomy.Map.Model;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>Rooms, folders and files as the sources lie; slow, for the compiler reads the whole library once.</summary>
[Trait("Category", "Slow")]
public class MapTests
{
    /// <summary>Files that lie in a circle of files today. Lower it when a circle is cut; it never grows.</summary>
    private const int MostFilesInCycles = 6;

    private static readonly Lazy<CodeModel> LazyLibrary = new(() => CodeModel.LoadLibrary(Repository.Root));

    private static CodeModel Library => LazyLibrary.Value;

    private static readonly Lazy<FileGraph> LazyFiles = new(() => new FileGraph(Library));

    private static FileGraph Files => LazyFiles.Value;

    private static Grouping Rooms => new(Files, new Folders(Library).RoomOf);

    [Fact]
    public void Every_name_in_the_library_is_understood()
    {
        Assert.Empty(Library.NotUnderstood);
        Assert.True(Library.Files.Count > 500);
        Assert.True(Library.References.Count > 10_000);
    }

    [Fact]
    public void Every_folder_of_a_room_has_a_floor() =>
        Assert.Empty(Rooms.Names.Where(room => !FloorTests.Floors.ContainsKey(room)));

    [Fact]
    public void No_rooms_use_one_another_in_a_circle() =>
        Assert.Empty(Rooms.Cycles().Select(cycle => string.Join(" <-> ", cycle)));

    [Fact]
    public void A_file_uses_files_of_its_own_room_and_of_lower_floors_only()
    {
        var rooms = Rooms;
        Assert.Empty(
            rooms
                .Edges()
                .Where(e => FloorTests.Floors[rooms.Of(e.To)] >= FloorTests.Floors[rooms.Of(e.From)])
                .Select(e => $"{e.From} uses {e.To}: {string.Join(", ", e.Used)}")
        );
    }

    [Fact]
    public void No_folders_use_one_another_in_a_circle() =>
        Assert.Empty(new Grouping(Files, new Folders(Library).FolderOf).Cycles().Select(cycle => string.Join(" <-> ", cycle)));

    [Fact]
    public void No_more_files_than_today_use_one_another_in_a_circle()
    {
        var cycles = Files.Cycles();
        int files = cycles.Sum(cycle => cycle.Count);
        Assert.True(
            files <= MostFilesInCycles,
            $"{files} files lie in circles, above {MostFilesInCycles}; '.ci/map cycles' says why:\n"
                + string.Join('\n', cycles.Select(cycle => string.Join(" <-> ", cycle.Select(f => Path.GetFileName(f)))))
        );
    }
}
